// Runs the demo job against a service, and writes what it was answered as one JSON object.
import { writeFileSync } from "node:fs";
import { answers, faults, total } from "./built/demo.js";

const [service, file] = process.argv.slice(2);
writeFileSync(
  file,
  JSON.stringify({ answers: await answers(service), total: await total(service), faults: await faults(service) }),
);
