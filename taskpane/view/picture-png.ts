/** A sheet is looked at enlarged and printed: so many pixels of the picture stand for one of the drawing. */
const pixelsAPixel = 2;

export interface Svg {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** A drawing as a PNG in base64, which the host places on a sheet; nothing leaves the page for it. */
export async function pngOf({ svg, width, height }: Svg): Promise<string> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = width * pixelsAPixel;
  canvas.height = height * pixelsAPixel;
  const paper = canvas.getContext("2d");
  if (paper === null) throw new Error("this page cannot draw");
  paper.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").replace(/^data:image\/png;base64,/, "");
}
