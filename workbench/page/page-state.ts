import type { BlankDelivery } from "../host/functions-host";

const themes = ["light", "dark"] as const;
export type ThemeName = (typeof themes)[number];

/** What the person has chosen on the page; part of its address, so that a reload keeps it. */
export interface Choices {
  readonly sample: string | undefined;
  readonly theme: ThemeName;
  readonly blank: BlankDelivery;
}

const blanks: readonly BlankDelivery[] = ["zero", "null", "empty"];

export function choicesIn(address: string): Choices {
  const asked = new URL(address).searchParams;
  return {
    sample: asked.get("sample") ?? undefined,
    theme: themes.find((name) => name === asked.get("theme")) ?? "light",
    blank: blanks.find((name) => name === asked.get("blank")) ?? "zero",
  };
}

export function addressWith(address: string, change: Partial<Choices>): string {
  const url = new URL(address);
  for (const [name, value] of Object.entries<string | undefined>(change)) if (value !== undefined) url.searchParams.set(name, value);
  return url.href;
}
