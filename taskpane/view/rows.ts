import { rowsWords as words } from "../words/rows";
import { type Actions } from "./actions";
import { button, h } from "./elements";

/**
 * What was read, in words, and the ways to read other rows; the one thing to press as long as nothing was read.
 */
export function rowsSection(read: HTMLElement | undefined, following: boolean, actions: Actions): HTMLElement[] {
  const box = h("input", { type: "checkbox", id: "follow", checked: following });
  box.addEventListener("change", () => {
    actions.follow(box.checked);
  });
  return [
    read ?? h("p", {}, words.select),
    h(
      "div",
      { className: "bar" },
      button(words.read, actions.readSelection, { id: "read", className: read === undefined ? "main" : "" }),
      h("label", { className: "check" }, box, words.follow),
    ),
  ];
}
