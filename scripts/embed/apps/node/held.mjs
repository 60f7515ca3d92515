import assert from 'node:assert/strict';
import { MessageChannel } from 'node:worker_threads';
import { revive, slabVolume } from 'flatwork-reckoner';

const result = slabVolume({
  outline: { shape: 'rectangle', length: '8.5 m', width: '5.4 m' },
  thickness: '125 mm',
});
const same = (held) => {
  const back = revive(held);
  assert.deepEqual(JSON.parse(JSON.stringify(back)), JSON.parse(JSON.stringify(result)));
  assert.equal(back.figures.volume.format('m3'), '5.74 m3');
};
same(structuredClone(result));
same(JSON.stringify(result));
const { port1, port2 } = new MessageChannel();
const arrived = new Promise((resolve) => port2.once('message', resolve));
port1.postMessage(result);
same(await arrived);
port1.close();
