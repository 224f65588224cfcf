// The bytes of a schema file, for the script that writes it and the test that compares it.

export const schemaText = (schema: object): string => `${JSON.stringify(schema, null, 2)}\n`;
