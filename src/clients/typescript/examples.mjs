// Writes every request of a folder, and the answer beside it, as TypeScript of the type the contract gives it. The compiler
// then says what a type lacks or asks for in vain: literals may not hold a member that their type does not name.
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";

const [folder] = process.argv.slice(2);
const end = ".request.json";

mkdirSync("examples", { recursive: true });
for (const file of readdirSync(folder).filter((file) => file.endsWith(end))) {
  const name = file.slice(0, -end.length);
  const path = `/v1/${name.slice(0, name.lastIndexOf("-"))}`;
  const request = readFileSync(`${folder}/${file}`, "utf8");
  const answer = readFileSync(`${folder}/${name}.answer.json`, "utf8");
  writeFileSync(
    `examples/${name}.ts`,
    `import type { paths } from "../thalweg.js";

type Operation = paths["${path}"]["post"];

export const request: Operation["requestBody"]["content"]["application/json"] = ${request};

export const answer: Operation["responses"][200]["content"]["application/json"] = ${answer};
`,
  );
}
