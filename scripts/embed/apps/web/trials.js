/** What is tried in a page, with the parts of the library handed in. */
const check = (holds, what) => {
  if (!holds) throw new Error(what);
};

/** Each trial by its name: `ok`, or what went wrong. */
export async function outcomesOf(trials) {
  const outcomes = {};
  for (const [name, trial] of Object.entries(trials)) {
    try {
      await trial();
      outcomes[name] = 'ok';
    } catch (error) {
      outcomes[name] = String(error?.stack ?? error);
    }
  }
  return outcomes;
}

const INPUT = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };

const stored = async (value) => {
  const database = await new Promise((resolve, reject) => {
    const request = indexedDB.open('flatwork', 1);
    request.onupgradeneeded = () => request.result.createObjectStore('results');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const done = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const results = () => database.transaction('results', 'readwrite').objectStore('results');
  await done(results().put(value, 'slab'));
  return done(results().get('slab'));
};

/** What every page can do. */
export const trialsOf = ({ calculations, jointPlan, revive, slabVolume, worksheet }) => {
  const result = slabVolume(INPUT);
  const same = (held) => {
    const back = revive(held);
    check(JSON.stringify(back) === JSON.stringify(result), 'not the same result');
    check(back.figures.volume.format('yd3') === '7.78 yd3', 'not the same figure');
  };
  return {
    'a result': () => check(result.figures.volume.format('yd3') === '7.78 yd3', 'another figure'),
    'a sheet': () => check(worksheet(result).includes('504 ft2'), 'no area in the sheet'),
    'a plan': () => {
      const plan = jointPlan({
        outline: { shape: 'rectangle', length: '9 m', width: '6 m' },
        thickness: '125 mm',
        spacing: '4.5 m',
      });
      const place = document.querySelector('#plan');
      place.innerHTML = plan;
      check(place.querySelector('svg').getBoundingClientRect().width > 100, 'the plan is not shown');
    },
    'the list of calculations': () => check(calculations.length > 30, 'few calculations'),
    structuredClone: () => same(structuredClone(result)),
    IndexedDB: async () => same(await stored(result)),
  };
};
