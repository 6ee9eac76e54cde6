import js from "@eslint/js";
import tseslint from "typescript-eslint";

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
      "max-lines-per-function": ["warn", { max: 40, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // The metadata generator of the host accepts `any[][]` and nothing stricter: see DEVELOPERS.md.
    files: ["functions/*.ts"],
    rules: { "@typescript-eslint/no-explicit-any": "off" },
  },
  {
    files: ["tests/**/*.ts"],
    rules: { "max-lines-per-function": "off" },
  },
  { files: ["*.config.js", ".ci/*.mjs", "tools/*.js"], languageOptions: { globals: { URL: "readonly", process: "readonly", Buffer: "readonly", console: "readonly" } } },
);
