/** React Native: its preset compiles every file of the package, and what it makes of them reckons as before. */
import type { Suite } from './check';
import { Project } from './project';

const PROFILES = [
  ['default', 'any engine'],
  ['hermes-stable', 'the engine that it brings along'],
] as const;

export const native: Suite = {
  name: 'React Native',
  async checks(quick) {
    const project = new Project('native', {
      '@babel/core': '^7.28.0',
      '@react-native/babel-preset': '0.88.1',
      '@babel/runtime': '^7.28.0',
    });
    const profiles = quick ? PROFILES.slice(0, 1) : PROFILES;
    return profiles.map(([profile, engine]) => ({
      name: `React Native's preset compiles the package for ${engine}, and it reckons`,
      run: () => void project.node('compile.cjs', profile),
    }));
  },
};
