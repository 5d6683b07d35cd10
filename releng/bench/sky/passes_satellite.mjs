// Counts passes with satellite.js in a plain loop: the elevation every 30 s, a pass for each run of them above 0.
// Prints passes and seconds. Usage: node passes_satellite.mjs FOLDER-OF-MODULE FILE
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const [folder, file] = process.argv.slice(2);
const entry = createRequire(pathToFileURL(folder + '/')).resolve('satellite.js');
const satellite = await import(pathToFileURL(entry));
const lines = readFileSync(file, 'utf8').split('\n');
const birds = lines.flatMap((line, i) => line === 'tle' ? [satellite.twoline2satrec(lines[i + 1], lines[i + 2])] : []);
const sites = lines.filter(line => line.startsWith('site ')).map(line => {
  const [latitude, longitude, altitude] = line.split(' ').slice(1).map(Number);
  return { latitude: latitude * Math.PI / 180, longitude: longitude * Math.PI / 180, height: altitude / 1000 };
});
const [start, end] = lines.find(line => line.startsWith('window ')).split(' ').slice(1).map(Number);

const began = performance.now();
let passes = 0;
for (const bird of birds) {
  const up = sites.map(() => false);
  for (let t = start; t <= end; t += 30) {
    const date = new Date(t * 1000);
    const ground = satellite.eciToEcf(satellite.propagate(bird, date).position, satellite.gstime(date));
    sites.forEach((site, i) => {
      const above = satellite.ecfToLookAngles(site, ground).elevation > 0;
      if (above && !up[i]) {
        passes++;
      }
      up[i] = above;
    });
  }
}
console.log(passes, (performance.now() - began) / 1000);
