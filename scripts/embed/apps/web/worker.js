import { revive, slabVolume } from 'flatwork-reckoner';
import { textSheet } from 'flatwork-reckoner/report';

// What comes in is an input with a result of the page in it.
self.onmessage = ({ data: { input, earlier } }) => {
  const result = slabVolume({ ...input, thickness: revive(earlier).figures.thickness ?? input.thickness });
  self.postMessage({ result, sheet: textSheet('Job', [{ name: 'Slab', results: [result] }]) });
};
