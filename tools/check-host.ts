import { checkHost } from "./hosting/check-host";

// npm run check-host -- https://your.host/folder   says whether it serves what Excel needs
const [base] = process.argv.slice(2);
if (base === undefined) {
  process.stderr.write("Usage: npm run check-host -- https://your.host/folder\n");
  process.exitCode = 2;
} else {
  const found = await checkHost(base, fetch);
  for (const { at, wrong } of found) process.stdout.write(`${at}\n  ${wrong}\n`);
  process.stdout.write(found.length === 0 ? `${base} serves what Excel needs.\n` : `${found.length} to mend.\n`);
  process.exitCode = found.length === 0 ? 0 : 1;
}
