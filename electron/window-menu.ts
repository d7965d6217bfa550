import type { MenuItemConstructorOptions } from 'electron';

/**
 * What Electron's own menu would give, less what has no place in front of a show: no reloading by a slip of the
 * hand, no developer tools. On a Mac the menus for copying and for windows must be there for their keys to work.
 */
export function windowMenu(platform: NodeJS.Platform): MenuItemConstructorOptions[] {
  const view: MenuItemConstructorOptions = {
    label: 'View',
    submenu: [
      { role: 'resetZoom' },
      { role: 'zoomIn' },
      { role: 'zoomOut' },
      { type: 'separator' },
      { role: 'togglefullscreen' },
    ],
  };
  return platform === 'darwin'
    ? [{ role: 'appMenu' }, { role: 'editMenu' }, view, { role: 'windowMenu' }]
    : [view];
}
