import './theme/base.css';
import { createRoot } from 'react-dom/client';
import { Connection } from './connection.ts';
import { App } from './frame/app.tsx';
import { NoToken } from './frame/whole-page-states.tsx';
import { copyLetters } from './parts/copy-mark.tsx';
import { HereProvider } from './state/here.tsx';
import { ShowStore } from './state/show-store.ts';
import { unsentShelf } from './state/unsent-shelf.ts';
import { ViewStore } from './state/view-store.ts';
import { themeSheet } from './theme/tokens.ts';
import { bridgeWire, socketWire, takeToken } from './wires.ts';

const sheet = new CSSStyleSheet();
sheet.replaceSync(themeSheet() + copyLetters());
document.adoptedStyleSheets = [sheet];

const place = document.getElementById('page');
if (!place) throw new Error('index.html has no place for the page.');
const root = createRoot(place);

const token = window.foldbook ? null : takeToken();
const wire = window.foldbook ? bridgeWire(window.foldbook) : token === null ? null : socketWire(token);

if (wire === null) {
  root.render(<NoToken />);
} else {
  const connection = new Connection(wire);
  const showStore = new ShowStore(connection, unsentShelf);
  const viewStore = new ViewStore();
  connection.start();
  root.render(
    <HereProvider connection={connection} showStore={showStore} viewStore={viewStore}>
      <App />
    </HereProvider>,
  );
}
