import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const inPackage = /^(.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+))[\\/]/;

/** Writes licences.txt: our own licence, then that of every package of which a module was built into a script. */
export class Licences {
  constructor(root) {
    this.root = root;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Licences", (compilation) => {
      const { Compilation, sources } = compiler.webpack;
      compilation.hooks.processAssets.tap({ name: "Licences", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONS }, () => {
        const folders = new Map();
        for (const { resource = "" } of [...compilation.modules].flatMap((module) => module.modules ?? [module])) {
          const [, folder, name] = inPackage.exec(resource) ?? [];
          if (folder !== undefined) folders.set(name.replaceAll("\\", "/"), folder);
        }
        const others = [...folders].sort(([one], [other]) => (one < other ? -1 : 1)).map(([name, folder]) => licence(name, folder));
        compilation.emitAsset("licences.txt", new sources.RawSource([licence("Runoff Ledger", this.root), ...others].join("\n\n")));
      });
    });
  }
}

/** A package that brings no licence may not be passed on: the build says so. */
function licence(name, folder) {
  const file = readdirSync(folder).find((each) => /^licen[cs]e(\.(md|txt))?$/i.test(each));
  if (file === undefined) throw new Error(`${name} ships in a script but brings no licence`);
  return `${name}\n${"=".repeat(name.length)}\n\n${readFileSync(path.join(folder, file), "utf8").trim()}\n`;
}
