/**
 * For the pages of the API: what is exported stands by trade, and a calculation is the function that it is called as,
 * with its input and its figures. Modules are named as they are imported.
 */
import {
  Comment,
  CommentTag,
  Converter,
  ParameterReflection,
  ReferenceType,
  ReflectionFlag,
  ReflectionKind,
  SignatureReflection,
} from 'typedoc';

/** Folders of `src/` by what they are to a reader, in the order of a job. */
const TRADES = {
  concrete: 'Concrete',
  pour: 'Pour',
  base: 'Ground',
  forms: 'Forms',
  grade: 'Grade',
  joints: 'Joints',
  steel: 'Steel',
  steps: 'Steps',
  weather: 'Weather',
  job: 'Whole job',
  opinion: 'Second opinion',
  outline: 'Outlines',
  geometry: 'Outlines',
  quantity: 'Quantities',
  reckoning: 'Results and errors',
};

const tradeOf = (file) => TRADES[/\/src\/([a-z]+)\//.exec(file)?.[1]];

/** Put a declaration under its trade. */
function sort(project, declaration) {
  const trade = tradeOf(`/${project.getSymbolIdFromReflection(declaration)?.fileName ?? ''}`);
  if (!trade) return;
  declaration.comment ??= new Comment();
  declaration.comment.blockTags.push(new CommentTag('@category', [{ kind: 'text', text: trade }]));
}

const isCalculation = ({ type }) => type instanceof ReferenceType && type.name === 'Calculation';

function parameter(project, signature, name, type) {
  const made = new ParameterReflection(name, ReflectionKind.Parameter, signature);
  made.type = type;
  project.registerReflection(made, undefined, undefined);
  return made;
}

/** Turn a constant that is called into a function. */
function callable(project, declaration, { call, result }) {
  const [input, figures] = declaration.type.typeArguments;
  const signature = new SignatureReflection(declaration.name, ReflectionKind.CallSignature, declaration);
  project.registerReflection(signature, undefined, undefined);
  const [, ...others] = call.parameters;
  signature.parameters = [
    parameter(project, signature, 'input', input),
    ...others.map(({ name, type }) => {
      const other = parameter(project, signature, name, type);
      other.setFlag(ReflectionFlag.Optional, true);
      return other;
    }),
  ];
  signature.type = ReferenceType.createResolvedReference(result.name, result, project);
  signature.type.typeArguments = [figures];
  signature.comment = declaration.comment;
  declaration.comment = undefined;
  declaration.type = undefined;
  declaration.defaultValue = undefined;
  declaration.setFlag(ReflectionFlag.Const, false);
  declaration.kind = ReflectionKind.Function;
  declaration.signatures = [signature];
}

export function load(app) {
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    const all = project.getReflectionsByKind(ReflectionKind.All);
    const named = (name) => all.find((one) => one.name === name && one.kindOf(ReflectionKind.SomeType));
    const [call] = named('Calculation').signatures;
    const known = { call, result: named('Result') };
    const exported = all.filter((one) => one.parent?.kindOf(ReflectionKind.Module));
    for (const module of all.filter((one) => one.kindOf(ReflectionKind.Module))) {
      module.name = module.name === 'index' ? project.name : `${project.name}/${module.name}`;
    }
    for (const one of exported) sort(project, one);
    for (const one of exported.filter(isCalculation)) callable(project, one, known);
  });
}
