export default { build: { target: 'es2022', chunkSizeWarningLimit: 5000 } };
