import { univerFunctions, type UniverFunction } from "../engine/univer-functions";
import { LateAnswers } from "./late-answers";
import type {} from "./workbench-link";
import { FunctionsHost, type BlankDelivery, type FunctionsMetadata } from "../host/functions-host";

const namespace = "RUNOFF";

/** Loads the built bundle of worksheet functions, unchanged, and lets the grid call them. */
export async function builtFunctions(blank: () => BlankDelivery): Promise<UniverFunction[]> {
  const host = new FunctionsHost();
  Object.assign(window, { CustomFunctions: host.runtime });
  const [metadata] = await Promise.all([fetchMetadata(), scriptLoaded("add-in/functions.js")]);
  const link = (): Window["runoffLedgerWorkbench"] => window.runoffLedgerWorkbench;
  const calls = new LateAnswers(host, () => link()?.store.records.switches.answersLate ?? 0, () => void link()?.recalculate());
  return univerFunctions(calls, metadata, namespace, blank);
}

async function fetchMetadata(): Promise<FunctionsMetadata> {
  const answer = await fetch("add-in/functions.json");
  return (await answer.json()) as FunctionsMetadata;
}

function scriptLoaded(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => { resolve(); };
    script.onerror = () => { reject(new Error(`${address} could not be loaded`)); };
    document.head.append(script);
  });
}
