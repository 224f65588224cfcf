// What a report for scripts is made of: plain JSON. Used by the reports that render/json writes.

/** Anything JSON can hold; a member that is undefined is left out. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | JsonObject;

export interface JsonObject {
  readonly [name: string]: JsonValue | undefined;
}
