import { placeOfCue } from '../show/cue-place.ts';
import { placeOf, type StagePlace } from '../show/stage-place.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView, LineView } from './act-view.ts';
import { cautions } from './cautions.ts';
import type { Drawing, Fill, LineLook, Point, Shape } from './drawing.ts';
import { lineFields, lineKey } from './line-fields.ts';
import { clusterLines, numbersText } from './plot-clusters.ts';
import {
  boxSideM,
  cueDepthM,
  cueWidthM,
  extentOfPlot,
  performerRadiusM,
  rectangleCorners,
  wedgeCorners,
} from './plot-geometry.ts';
import type { Part, Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { deviceText, listenersText } from './words.ts';

/** The stage to scale, seen from the audience: who stands where, lines by number, wedges with their aim, boxes. */
export function stagePlot(view: ActView): Sheet {
  return sheetOfAct('stage plot', 'Stage plot', view, {
    cautions: [cautions.plot],
    page: { orientation: 'landscape', paper: null },
    parts: [{ is: 'drawing', heading: null, drawing: drawStage(view) }, plotKey, ...legend(view)],
  });
}

const plotKey: Part = {
  is: 'text',
  heading: null,
  paragraphs: [
    'Circles are performers. Dots are lines by their numbers. M1 is the wedge or fill of mix 1. A line of the grid is 2 m.',
  ],
};

function drawStage(view: ActView): Drawing {
  const { rig } = view.sheet;
  const half = rig.stageWidthM / 2;
  const places = [...view.sheet.performers, ...view.sheet.sources, ...view.sheet.mixes, ...view.sheet.boxes]
    .map(placeOf)
    .concat(placeOfCue(rig))
    .filter((it) => it !== null);
  const { leftM, rightM, frontM, backM } = extentOfPlot(rig, places);
  return {
    leftM: leftM - 0.5,
    rightM: rightM + 0.5,
    frontM: frontM - 0.7,
    backM: backM + 0.3,
    shapes: [
      ...grid(half, rig.stageDepthM),
      ...frame(half, rig.stageDepthM),
      ...boxShapes(view),
      ...cueShapes(view),
      ...wedgeShapes(view),
      ...performerShapes(view),
      ...lineShapes(view),
    ],
  };
}

/** A line every two metres, so that a place can be measured without a ruler. */
function grid(half: number, depth: number): Shape[] {
  const shapes: Shape[] = [];
  for (let x = -Math.floor(half / 2) * 2; x <= half; x += 2)
    shapes.push(
      path(
        [
          { xM: x, yM: 0 },
          { xM: x, yM: depth },
        ],
        'dashed',
      ),
    );
  for (let y = 2; y < depth; y += 2)
    shapes.push(
      path(
        [
          { xM: -half, yM: y },
          { xM: half, yM: y },
        ],
        'dashed',
      ),
    );
  return shapes;
}

function frame(half: number, depth: number): Shape[] {
  const corners = [
    { xM: -half, yM: 0 },
    { xM: half, yM: 0 },
    { xM: half, yM: depth },
    { xM: -half, yM: depth },
  ];
  return [
    path(corners, 'thick', true),
    text({ xM: 0, yM: -0.45 }, 'audience'),
    text({ xM: -half, yM: -0.45 }, 'stage right', 'left'),
    text({ xM: half, yM: -0.45 }, 'stage left', 'right'),
  ];
}

function boxShapes({ sheet }: ActView): Shape[] {
  return sheet.boxes.flatMap((box) => {
    const at = placeOf(box);
    return at
      ? [
          path(rectangleCorners(at, boxSideM, boxSideM), 'thick', true, 'dark'),
          text({ xM: at.xM, yM: at.yM + 0.38 }, `box ${box.name}`),
        ]
      : [];
  });
}

function cueShapes({ sheet }: ActView): Shape[] {
  const at = placeOfCue(sheet.rig);
  if (!at) return [];
  return [path(rectangleCorners(at, cueWidthM, cueDepthM), 'thick', true), text(at, 'cue', 'centre', true)];
}

function wedgeShapes({ mixes }: ActView): Shape[] {
  return mixes.flatMap(({ mix, number }) => {
    const at = placeOf(mix);
    if (!at || mix.deviceKind === 'in-ear' || mix.deviceKind === null) return [];
    return [
      path(wedgeCorners(at, mix.aimDeg), 'thick', true, 'light'),
      text(at, `M${number}`, 'centre', true),
    ];
  });
}

function performerShapes({ sheet }: ActView): Shape[] {
  return sheet.performers.flatMap((performer): Shape[] => {
    const at = placeOf(performer);
    if (!at) return [];
    return [
      { is: 'circle', at, radiusM: performerRadiusM, line: 'thick', fill: 'none' },
      text({ xM: at.xM, yM: at.yM + performerRadiusM + 0.16 }, performer.name, 'centre', true),
    ];
  });
}

function lineShapes({ lines }: ActView): Shape[] {
  return clusterLines(lines).flatMap(({ at, lines: near }): Shape[] => [
    { is: 'circle', at, radiusM: 0.08, line: 'thin', fill: 'dark' },
    text(
      { xM: at.xM + performerRadiusM + 0.06, yM: at.yM },
      numbersText(near.map(({ line }) => line)),
      'left',
    ),
  ]);
}

function legend(view: ActView): Part[] {
  const fields: Field<LineView>[] = [
    lineFields.line,
    lineFields.source,
    lineFields.performer,
    lineFields.pickUp,
    lineFields.stand,
    {
      title: 'Place',
      grow: 1,
      of: ({ source }) => [source.place, metresText(placeOf(source))].filter(Boolean).join(', '),
    },
  ];
  const people = tableOf(
    [
      { title: 'Performer', grow: 1, of: ({ name }) => name },
      { title: 'Role', grow: 1, of: ({ role }) => role },
      { title: 'Place', grow: 2, of: (it) => [it.place, metresText(placeOf(it))].filter(Boolean).join(', ') },
    ],
    view.sheet.performers,
    { heading: 'Who stands where', key: ({ id }) => id, empty: 'Nobody has been named yet.' },
  );
  const mixes = tableOf(
    [
      { title: 'Mix', kind: 'number', of: ({ number }) => number },
      { title: 'For', grow: 1, of: listenersText },
      { title: 'Heard through', of: deviceText },
      {
        title: 'Place',
        grow: 2,
        of: ({ mix }) => [mix.place, metresText(placeOf(mix))].filter(Boolean).join(', '),
      },
    ],
    view.mixes,
    { heading: 'Wedges, fills and packs', key: ({ mix }) => mix.id, empty: 'This act has no mix yet.' },
  );
  const lines = tableOf(fields, view.lines, {
    heading: 'Lines by number',
    key: lineKey,
    empty: 'This act has no input yet.',
  });
  return [people, mixes, lines];
}

function metresText(at: StagePlace | null): string {
  if (!at) return 'not on the plot';
  const side =
    at.xM === 0 ? 'middle' : `${Math.abs(at.xM).toFixed(1)} m stage ${at.xM > 0 ? 'left' : 'right'}`;
  return `${side}, ${at.yM.toFixed(1)} m upstage`;
}

function path(points: Point[], line: LineLook, closed = false, fill: Fill = 'none'): Shape {
  return { is: 'line', points, closed, line, fill };
}

function text(at: Point, words: string, align: 'left' | 'centre' | 'right' = 'centre', bold = false): Shape {
  return { is: 'text', at, text: words, sizePt: 9, bold, align };
}
