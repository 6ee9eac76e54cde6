/** What was looked at, and what is wrong with it, in words that say what to do. */
export interface Finding {
  readonly at: string;
  readonly wrong: string;
}

type Get = (address: string) => Promise<Response>;

/** Files that Excel asks for under fixed names: what each has to come as. */
const files: readonly { readonly name: string; readonly type: RegExp; readonly isForExcelItself?: boolean }[] = [
  { name: "manifest.xml", type: /^(text|application)\/xml\b/ },
  { name: "taskpane.html", type: /^text\/html\b/ },
  { name: "taskpane.js", type: /^(text|application)\/(x-)?javascript\b/ },
  { name: "taskpane.css", type: /^text\/css\b/ },
  { name: "functions.js", type: /^(text|application)\/(x-)?javascript\b/, isForExcelItself: true },
  { name: "functions.json", type: /^application\/json\b/, isForExcelItself: true },
  { name: "assets/icon-32.png", type: /^image\/png\b/ },
];

/** A day in seconds: what is kept for longer outlives a repair. */
const longestKept = 86_400;

/** Looks at a static host as Excel would; `get` is the network. An empty answer: it serves what Excel needs. */
export async function checkHost(base: string, get: Get): Promise<Finding[]> {
  if (!base.startsWith("https://")) return [{ at: base, wrong: "the address must begin with https://: Excel opens no other." }];
  const folder = base.replace(/\/+$/, "");
  const found: Finding[] = [];
  for (const file of files) found.push(...(await checkFile(`${folder}/${file.name}`, file, get)));
  return [...found, ...(await checkManifest(folder, get))];
}

async function checkFile(at: string, { name, type, isForExcelItself }: (typeof files)[number], get: Get): Promise<Finding[]> {
  const answer = await reached(at, get);
  if (answer === undefined) return [{ at, wrong: "it cannot be reached: put the whole folder dist there." }];
  const wrong: string[] = [];
  const header = (called: string): string => answer.headers.get(called) ?? "";
  if (!type.test(header("content-type"))) wrong.push(`it comes as "${header("content-type")}": give ${name.replace(/^.*\./, ".")} files their content type.`);
  if (isForExcelItself === true && header("access-control-allow-origin") !== "*") {
    wrong.push("Excel on the web fetches it from another address: send Access-Control-Allow-Origin: * with it.");
  }
  const kept = header("cache-control");
  if (name.endsWith(".png") && /no-store/.test(kept)) wrong.push("Excel shows no icon that may not be kept: take no-store away.");
  const seconds = Number(/max-age=(\d+)/.exec(kept)?.[1] ?? 0);
  if (!name.endsWith(".png") && (seconds > longestKept || /immutable/.test(kept))) {
    wrong.push(`it may be kept for ${seconds} seconds: let it be asked for again within a day, or a repair stays unseen.`);
  }
  return wrong.map((words) => ({ at, wrong: words }));
}

/** Every address in the manifest: of this host, and there. */
async function checkManifest(folder: string, get: Get): Promise<Finding[]> {
  const manifest = await reached(`${folder}/manifest.xml`, get);
  if (manifest === undefined) return [];
  const addresses = [...new Set([...(await manifest.text()).matchAll(/DefaultValue="(https:[^"]+)"/g)].map(([, address = ""]) => address))];
  const at = `${folder}/manifest.xml`;
  if (addresses.length === 0) return [{ at, wrong: "it names no address: it is not the manifest of the build." }];
  const foreign = addresses.find((address) => !address.startsWith(`${folder}/`));
  if (foreign !== undefined) return [{ at, wrong: `it was built for ${new URL(foreign).origin}: build again with --env base=${folder}.` }];
  const absent: Finding[] = [];
  for (const address of addresses) if ((await reached(address, get)) === undefined) absent.push({ at: address, wrong: "the manifest names it, and it cannot be reached." });
  return absent;
}

async function reached(address: string, get: Get): Promise<Response | undefined> {
  try {
    const answer = await get(address);
    return answer.ok ? answer : undefined;
  } catch {
    return undefined;
  }
}
