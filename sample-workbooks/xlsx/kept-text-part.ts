import { type Part } from "./part";
import { type KeptText } from "./spec";

/** A text that an add-in keeps with a sheet: the host stores it in a part of its own, as UTF-16 (from memory). */
export const keptTextPart = ({ text }: KeptText, path: string): Part => ({
  path,
  content: text,
  isUtf16: true,
  type: "application/vnd.openxmlformats-officedocument.spreadsheetml.customProperty",
});
