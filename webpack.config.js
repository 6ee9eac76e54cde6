import { readFileSync } from "node:fs";
import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import webpack from "webpack";
import { Licences } from "./tools/licences.js";
import { page, publishedAs } from "./tools/pages.js";

const developmentBase = "https://localhost:3000";
const root = import.meta.dirname;
const version = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")).version;

/** The files that hold worksheet functions; cells.ts and answers.ts only help them. */
const parts = ["log", "readings", "meters", "diagnosis", "bands", "drift", "flush", "doses", "mix", "feed", "recovery", "environment"].map(
  (part) => `./functions/${part}.ts`,
);

/** One module that imports them all, so that the bundler can melt everything into one scope: 7 % smaller than a list of entries. */
const functions = `data:text/javascript,${encodeURIComponent(parts.map((part) => `import ${JSON.stringify(path.resolve(root, part))};`).join(""))}`;

/** Finishes functions.json: lets error cells reach the functions as values (the generator never writes that) and sets the base address. */
class FinishMetadata {
  constructor(base) {
    this.base = base;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FinishMetadata", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "FinishMetadata", stage }, () => {
        if (!compilation.getAsset("functions.json")) return;
        compilation.updateAsset("functions.json", (source) => {
          const metadata = JSON.parse(source.source().toString());
          metadata.allowErrorForDataTypeAny = true;
          return new webpack.sources.RawSource(JSON.stringify(metadata, null, 2).replaceAll(developmentBase, this.base) + "\n");
        });
      });
    });
  }
}

/** A path as the project names it, whatever the system's separator. */
const inProject = (file) => path.relative(root, file).split(path.sep).join("/");

/** The README and the documents as pages, with the pictures and the stylesheet they use. */
const pages = [
  ...["README.md", "docs/**/*.md"].map((from) => ({
    from,
    to: ({ absoluteFilename }) => publishedAs(inProject(absoluteFilename)),
    transform: (text, file) => page(text.toString(), inProject(file)),
    noErrorOnMissing: true,
  })),
  { from: "docs/pictures/*", to: "docs/pictures/[name][ext]", noErrorOnMissing: true },
  { from: "assets/pages.css", to: "docs/pages.css" },
];

/** Where the built files will be served from, without a closing slash. */
function baseUrl({ base = developmentBase }) {
  if (URL.canParse(base) && new URL(base).protocol === "https:") return base.replace(/\/+$/, "");
  throw new Error(`--env base=${base}: it must be an address that begins with https://, for Excel opens no other`);
}

export default (env = {}, argv = {}) => {
  const base = baseUrl(env);
  const serving = Boolean(env.WEBPACK_SERVE);
  return {
    mode: argv.mode ?? "production",
    target: ["web", "es2020"],
    // The name is there once the last of the functions is: the pane knows by it that they are loaded.
    entry: { functions: { import: functions, library: { name: "RunoffLedgerFunctions", type: "var" } }, taskpane: "./taskpane/taskpane.ts" },
    output: { path: path.resolve(root, env.out ?? "dist"), filename: "[name].js", chunkFilename: `[name].js?v=${version}`, clean: true },
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [{ test: /\.ts$/, exclude: /node_modules/, loader: "ts-loader", options: { transpileOnly: true } }],
    },
    plugins: [
      new CustomFunctionsMetadataPlugin({ output: "functions.json", input: parts }),
      new FinishMetadata(base),
      new Licences(root),
      new CopyPlugin({
        patterns: [
          { from: "taskpane/*.{html,css}", to: "[name][ext]", transform: (text) => text.toString().replaceAll("%VERSION%", version) },
          { from: "assets/*.png", to: "assets/[name][ext]" },
          {
            from: "manifest.xml",
            transform: (text) => text.toString().replaceAll(developmentBase, base).replaceAll("%VERSION%", version),
          },
          ...pages,
        ],
      }),
    ],
    devtool: serving ? "inline-source-map" : false,
    performance: { hints: false },
    stats: "errors-warnings",
  };
};
