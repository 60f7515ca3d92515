/** Growths beyond proportion that are known, with the reason. Each still answers within a second. */
export const KNOWN: readonly { readonly of: string; readonly what: RegExp; readonly because: string }[] = [];
