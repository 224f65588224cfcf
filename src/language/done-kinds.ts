// What a row of the record may say was done. Of the shapes only this is known before a plan is read, by the declaration of
// `footfall done`, so it stands apart from them and loads none of them.

export const DONE_KINDS = ['session', 'practice', 'match', 'test'] as const;
