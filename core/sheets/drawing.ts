/**
 * A drawing to scale, in metres from the middle of the front edge: x to stage left (house right), y upstage. Text
 * sizes are points, for a name must be legible at any scale.
 */
export type Drawing = {
  leftM: number;
  rightM: number;
  /** Nearest to the audience. */
  frontM: number;
  backM: number;
  /** Who looks: from the audience, downstage is at the foot of the page. */
  shapes: Shape[];
};

export type Point = { xM: number; yM: number };

export type Shape =
  | { is: 'line'; points: Point[]; closed: boolean; line: LineLook; fill: Fill }
  | { is: 'circle'; at: Point; radiusM: number; line: LineLook; fill: Fill }
  | {
      is: 'text';
      at: Point;
      text: string;
      sizePt: number;
      bold: boolean;
      align: 'left' | 'centre' | 'right';
    };

/** Told apart in black and white. */
export type LineLook = 'thin' | 'thick' | 'dashed' | 'none';
export type Fill = 'none' | 'light' | 'dark';
