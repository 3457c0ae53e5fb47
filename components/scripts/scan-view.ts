/**
 * Where an image lies in a frame: how large it is drawn and where its upper left corner stands. Pure arithmetic; all
 * lengths are pixels of the frame.
 */
export interface Size {
  width: number;
  height: number;
}

export interface View {
  /** Pixels of the frame for one of the image. */
  scale: number;
  x: number;
  y: number;
}

/** An image is never drawn larger than this many times its own pixels, and at least this many times the whole of it. */
const largest = 3;
const deepest = 6;

/** The scale at which the whole image just fits; a small image is not blown up. */
export function fitScale(frame: Size, image: Size): number {
  return Math.min(frame.width / image.width, frame.height / image.height, 1);
}

/** The least and the greatest scale. */
export function limits(frame: Size, image: Size): { least: number; most: number } {
  const least = fitScale(frame, image);
  return { least, most: Math.max(largest, least * deepest) };
}

/** The whole image, in the middle of the frame. */
export function whole(frame: Size, image: Size): View {
  return bounded({ scale: fitScale(frame, image), x: 0, y: 0 }, frame, image);
}

/**
 * The nearest view that wastes nothing: between the least and the greatest scale, in the middle where the image is
 * smaller than the frame, and without an empty edge where it is larger.
 */
export function bounded(view: View, frame: Size, image: Size): View {
  const { least, most } = limits(frame, image);
  const scale = Math.min(Math.max(view.scale, least), most);
  const along = (at: number, room: number, length: number) =>
    length <= room ? (room - length) / 2 : Math.min(0, Math.max(room - length, at));
  return {
    scale,
    x: along(view.x, frame.width, image.width * scale),
    y: along(view.y, frame.height, image.height * scale),
  };
}

/** The view larger by a factor, the spot of the image under a point of the frame staying where it is. */
export function zoomed(
  view: View,
  factor: number,
  at: { x: number; y: number },
  frame: Size,
  image: Size,
): View {
  const { least, most } = limits(frame, image);
  const scale = Math.min(Math.max(view.scale * factor, least), most);
  const grown = scale / view.scale;
  return bounded(
    { scale, x: at.x - (at.x - view.x) * grown, y: at.y - (at.y - view.y) * grown },
    frame,
    image,
  );
}

/** The view moved along. */
export function moved(view: View, by: { x: number; y: number }, frame: Size, image: Size): View {
  return bounded({ ...view, x: view.x + by.x, y: view.y + by.y }, frame, image);
}
