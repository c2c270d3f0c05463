import createClient from "openapi-fetch";
import type { components, paths } from "./thalweg.js";
import { request as job } from "./examples/layouts-demo.js";
import { request as roof } from "./examples/roofs-demo.js";
import { request as pieces } from "./examples/stock-cuts-hip.js";
import { request as profiles } from "./examples/trims-profiles.js";
import { request as books } from "./examples/repricings-books.js";
import { request as hip } from "./examples/quotes-hip.js";
import { request as shed } from "./examples/quotes-shed.js";
import { request as corner } from "./examples/valleys-square.js";

type Problem = components["schemas"]["Problem"];

/** What each example is answered, by the example's name. */
export async function answers(service: string): Promise<Record<string, unknown>> {
  const client = createClient<paths>({ baseUrl: service });
  return {
    "roofs-demo": answered(await client.POST("/v1/roofs", { body: roof })),
    "layouts-demo": answered(await client.POST("/v1/layouts", { body: job })),
    "quotes-hip": answered(await client.POST("/v1/quotes", { body: hip })),
    "repricings-books": answered(await client.POST("/v1/repricings", { body: books })),
    "valleys-square": answered(await client.POST("/v1/valleys", { body: corner })),
    "trims-profiles": answered(await client.POST("/v1/trims", { body: profiles })),
    "stock-cuts-hip": answered(await client.POST("/v1/stock-cuts", { body: pieces })),
  };
}

/** What a roof comes to, by way of its takeoff. That goes on as it came: its type is that of a saved takeoff, too. */
export async function total(service: string): Promise<components["schemas"]["Money"] | undefined> {
  const client = createClient<paths>({ baseUrl: service });
  if (shed.layout === undefined) {
    throw new Error("the example has no layout");
  }
  const takeoff = answered(await client.POST("/v1/takeoffs", { body: shed.layout }));
  return answered(await client.POST("/v1/quotes", { body: { takeoff, priceBook: shed.priceBook } })).total;
}

/** Where in the request each fault lies. */
export async function faults(service: string): Promise<string[]> {
  const client = createClient<paths>({ baseUrl: service });
  const { error } = await client.POST("/v1/layouts", { body: { ...job, panel: { ...job.panel, cover: "18 furlongs" } } });
  return error === undefined ? [] : error.errors.map(({ code, pointer }) => `${code} ${pointer}`);
}

function answered<T>({ data, error }: { data?: T; error?: Problem }): T {
  if (data === undefined) {
    throw new Error(error?.detail ?? "no answer");
  }
  return data;
}
