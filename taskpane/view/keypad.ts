import { flushWords as words } from "../words/flush";
import { h } from "./elements";

const keys = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "⌫"] as const;

/** Large keys for a wet thumb: they type into the field that had the focus last. */
export function keypad(fields: readonly HTMLInputElement[], typed: (field: HTMLInputElement) => void): HTMLElement {
  let current = fields.find(({ value }) => value === "") ?? fields[0];
  for (const field of fields) field.addEventListener("focus", () => { current = field; });
  const press = (key: (typeof keys)[number]): void => {
    if (current === undefined) return;
    current.value = key === "⌫" ? current.value.slice(0, -1) : current.value + key;
    typed(current);
  };
  const buttons = keys.map((key) => {
    const label = key === "⌫" ? { aria: { label: words.deleteKey } } : {};
    const each = h("button", { type: "button", className: "key", ...label }, key);
    // The field keeps the focus, so that the next key goes to it as well.
    each.addEventListener("pointerdown", (event) => { event.preventDefault(); });
    each.addEventListener("click", () => { press(key); });
    return each;
  });
  return h("div", { className: "keypad", role: "group", aria: { label: words.keys } }, ...buttons);
}
