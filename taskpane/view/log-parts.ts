import { type Choices } from "../choices";
import { type RootZone } from "../root-zone";
import { type Actions } from "./actions";
import { columnsSection } from "./columns";
import { limitsSection } from "./limits";
import { potsSection } from "./pots";
import { questionsSection } from "./questions";
import { setAsideSection } from "./set-aside";
import { settingsSection } from "./settings";
import { standingSection } from "./standing";

/** What is said of a log that was read, by the part of the page where it stands. */
export function logParts(zone: RootZone, choices: Choices, actions: Actions): Readonly<Record<string, Node[]>> {
  const [standing, settings] = [standingSection(zone, actions), settingsSection(zone, choices, actions)];
  // Until there are limits to judge against, choosing the medium is the next thing.
  const isNext = zone.judgement === undefined;
  return {
    questions: questionsSection(zone, choices, actions),
    standing: isNext ? [...standing, ...settings] : standing,
    pots: potsSection(zone, actions),
    settings: isNext ? [] : settings,
    columns: columnsSection(zone, choices, actions),
    aside: setAsideSection(zone, actions),
    limits: limitsSection(zone, choices, actions),
  };
}
