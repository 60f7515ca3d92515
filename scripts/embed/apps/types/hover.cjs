/** What an editor shows over a call: the words of the calculation itself. */
const assert = require('node:assert/strict');
const { readFileSync } = require('node:fs');
const ts = require(process.argv[2]);

const name = `${__dirname}/hovered.mts`;
const text =
  "import { slopeOf } from 'flatwork-reckoner';\nexport const result = slopeOf({ slope: '2%' });\n";
const read = (file) => (file === name ? text : ts.sys.readFile(file));
const service = ts.createLanguageService({
  getCompilationSettings: () => ({
    module: ts.ModuleKind.Node16,
    moduleResolution: ts.ModuleResolutionKind.Node16,
    target: ts.ScriptTarget.ES2021,
    types: [],
  }),
  getScriptFileNames: () => [name],
  getScriptVersion: () => '1',
  getScriptSnapshot: (file) => {
    const found = read(file);
    return found === undefined ? undefined : ts.ScriptSnapshot.fromString(found);
  },
  getCurrentDirectory: () => __dirname,
  getDefaultLibFileName: (options) => ts.getDefaultLibFilePath(options),
  fileExists: (file) => file === name || ts.sys.fileExists(file),
  readFile: read,
});
const { documentation } = service.getQuickInfoAtPosition(name, text.indexOf('slopeOf({'));
const shown = ts.displayPartsToString(documentation);
const declarations = readFileSync(`${__dirname}/node_modules/flatwork-reckoner/dist/index.d.ts`, 'utf8');
const before = declarations.slice(0, declarations.indexOf('declare const slopeOf'));
const [, first] = before.slice(before.lastIndexOf('/**')).split('\n');
const own = first.replace(/^ \* /, '');
assert.ok(own.length > 20, 'no words over slopeOf in the declarations');
assert.ok(shown.startsWith(own), `${shown}\nis not\n${own}`);
