import { revive, slabVolume } from 'flatwork-reckoner';
import { loadCalculation } from 'flatwork-reckoner/catalog';
import { calculations } from 'flatwork-reckoner/catalog/all';
import { jointPlan } from 'flatwork-reckoner/drawing';
import { worksheet } from 'flatwork-reckoner/report';
import { createElement, useState } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { createApp, h, nextTick, reactive } from 'vue';
import { outcomesOf, trialsOf } from './trials.js';

const reckoned = (thickness) =>
  slabVolume({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness });
const shown = (result) => result.figures.volume.format('yd3');

const expect = (selector, text) => {
  const said = document.querySelector(selector).textContent;
  if (said !== text) throw new Error(`${selector} shows ${said}, not ${text}`);
};

const holds = {
  'a calculation loaded on demand': async () => {
    const { calculation, title } = await loadCalculation('slope');
    if (!title || !calculation.attempt({ slope: '2%' }).ok) throw new Error('no slope');
  },
  'a worker': async () => {
    const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
    const result = reckoned('5 in');
    const answer = new Promise((resolve, reject) => {
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = ({ message }) => reject(new Error(message));
    });
    worker.postMessage({
      input: { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' },
      earlier: result,
    });
    const { result: arrived, sheet } = await answer;
    if (shown(revive(arrived)) !== '7.78 yd3' || !sheet.includes('504 ft2'))
      throw new Error('another figure');
  },
  'a React state': () => {
    let set;
    const App = () => {
      // A function would be called by React: a calculation or an entry of the catalog must be kept in one.
      const [result, setResult] = useState(() => reckoned('5 in'));
      set = setResult;
      return createElement('p', undefined, shown(result));
    };
    flushSync(() => createRoot(document.querySelector('#react')).render(createElement(App)));
    expect('#react', '7.78 yd3');
    flushSync(() => set(reckoned('4 in')));
    expect('#react', '6.22 yd3');
  },
  'Vue, reactive': async () => {
    const state = reactive({ result: reckoned('5 in') });
    createApp({ render: () => h('p', shown(state.result)) }).mount('#vue');
    expect('#vue', '7.78 yd3');
    state.result = reckoned('4 in');
    await nextTick();
    expect('#vue', '6.22 yd3');
    if (!worksheet(state.result).includes('504 ft2')) throw new Error('no area in the sheet');
    slabVolume({
      outline: { shape: 'circle', diameter: '9 ft' },
      thickness: state.result.figures.perimeter ? '4 in' : '5 in',
    });
  },
};

globalThis.outcomes = await outcomesOf({
  ...trialsOf({ calculations, jointPlan, revive, slabVolume, worksheet }),
  ...holds,
});
