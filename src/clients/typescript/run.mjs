// Runs the demo job against a service, and writes what it was answered as one JSON object.
import { writeFileSync } from "node:fs";
import { answers, faults, total } from "./built/demo.js";
import { request as corner } from "./built/examples/valleys-square.js";
import { valley } from "./built/shop.js";

const [service, file] = process.argv.slice(2);
const typing = new AbortController().signal;
const shown = await valley(service, corner, typing);
const beside = await valley(service, { ...corner, corner: { ...corner.corner, pitches: ["6:12", "steep"] } }, typing);
writeFileSync(
  file,
  JSON.stringify({
    answers: await answers(service),
    total: await total(service),
    faults: await faults(service),
    shop: { shown, beside: Object.fromEntries(beside) },
  }),
);
