import js from "@eslint/js";
import tseslint from "typescript-eslint";

/** A sentence, a pattern and an example stay whole on their line, so that they can be read and searched for. */
const lineLength = { code: 120, ignoreStrings: true, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true };

export default tseslint.config(
  { ignores: [".cache/", "dist/", "workbench/dist/", "node_modules/", "coverage/"] },
  js.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/only-throw-error": [
        "error",
        { allow: [{ from: "package", package: "custom-functions-runtime", name: "Error" }] },
      ],
      "max-lines-per-function": ["warn", { max: 50, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ["src/**/*.ts", "functions/**/*.ts", "taskpane/**/*.ts"],
    rules: { "max-len": ["warn", { ...lineLength, ignorePattern: "^ \\* @" }] },
  },
  {
    // The metadata generator of the host accepts `any[][]` and nothing stricter: see DEVELOPERS.md. The first paragraph
    // above a worksheet function is the host's tooltip, and stands on one line.
    files: ["functions/*.ts"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
      "max-len": ["warn", { ...lineLength, ignorePattern: "^ \\* (@|[A-Z])" }],
    },
  },
  {
    files: ["tests/**/*.ts"],
    rules: { "max-lines-per-function": "off" },
  },
  { files: ["*.config.js", ".ci/*.mjs", "tools/*.js"], languageOptions: { globals: { URL: "readonly", process: "readonly", Buffer: "readonly", console: "readonly" } } },
);
