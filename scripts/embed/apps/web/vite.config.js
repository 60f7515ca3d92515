export default { worker: { format: 'es' }, build: { target: 'es2022' } };
