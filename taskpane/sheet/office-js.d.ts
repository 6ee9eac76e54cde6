/** Documented for ExcelApi 1.9, but missing from the published types. */
declare namespace Excel {
  interface ShapeCollection {
    addSvg(xml: string): Excel.Shape;
  }
}
