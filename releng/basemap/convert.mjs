// Makes the base map of bundles/org.straddle.atlas from the TopoJSON of two npm packages:
//
//   npm pack world-atlas@2.0.2 us-atlas@3.0.1     (unpack each into a folder of its own)
//   node convert.mjs WORLD-ATLAS-FOLDER US-ATLAS-FOLDER ../../bundles/org.straddle.atlas/src/org/straddle/atlas/layer/basemap.bin.gz
//
// world-atlas 2.0.2 holds Natural Earth 4.1.0, 1:10 million, public domain; us-atlas 3.0.1 holds the cartographic
// boundaries of the U.S. Census Bureau, edition 2017, public domain as a work of the United States government.
//
// The file: gzip over "SBM1", then three sets: land (closed rings; a ring within another is a hole), borders of
// countries, borders of states (lines). Each set is its number of parts, each part its number of positions and then,
// for each position, longitude and latitude in 1/500 degree as differences from the one before. All numbers are
// zigzag variable-length integers of 7 bits a byte, low ones first.
import { readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

const PER_DEGREE = 500;
const TOLERANCE_DEG = 0.004;

const [worldFolder, usFolder, target] = process.argv.slice(2);
const world = JSON.parse(readFileSync(`${worldFolder}/countries-10m.json`));
const states = JSON.parse(readFileSync(`${usFolder}/states-10m.json`));

function decoded(topology) {
  const { scale, translate } = topology.transform;
  return topology.arcs.map(arc => {
    let x = 0, y = 0;
    return arc.map(([dx, dy]) => [(x += dx) * scale[0] + translate[0], (y += dy) * scale[1] + translate[1]]);
  });
}

function polygons(geometry) {
  switch (geometry.type) {
    case 'Polygon': return [geometry.arcs];
    case 'MultiPolygon': return geometry.arcs;
    case 'GeometryCollection': return geometry.geometries.flatMap(polygons);
    default: return [];
  }
}

// Ends stay, so that arcs go on meeting; distances are taken on the ground.
function simplified(line) {
  const keep = new Uint8Array(line.length);
  keep[0] = keep[line.length - 1] = 1;
  const open = [[0, line.length - 1]];
  while (open.length) {
    const [from, to] = open.pop();
    const wide = Math.cos(line[from][1] * Math.PI / 180);
    const [ax, ay] = [line[from][0] * wide, line[from][1]];
    const [dx, dy] = [line[to][0] * wide - ax, line[to][1] - ay];
    const length = dx * dx + dy * dy;
    let farthest = -1, most = TOLERANCE_DEG ** 2;
    for (let i = from + 1; i < to; i++) {
      const [px, py] = [line[i][0] * wide - ax, line[i][1] - ay];
      const along = length ? Math.max(0, Math.min(1, (px * dx + py * dy) / length)) : 0;
      const apart = (px - along * dx) ** 2 + (py - along * dy) ** 2;
      if (apart > most) {
        [farthest, most] = [i, apart];
      }
    }
    if (farthest > 0) {
      keep[farthest] = 1;
      open.push([from, farthest], [farthest, to]);
    }
  }
  return line.filter((_, i) => keep[i]);
}

function joined(arcs, ring) {
  const line = [];
  for (const index of ring) {
    const arc = index < 0 ? [...arcs[~index]].reverse() : arcs[index];
    line.push(...(line.length ? arc.slice(1) : arc));
  }
  return line;
}

// Arcs that two members of a collection share.
function borders(topology, arcs, object) {
  const users = new Map();
  object.geometries.forEach((member, number) => polygons(member).flat(2).forEach(index => {
    const arc = index < 0 ? ~index : index;
    users.set(arc, (users.get(arc) ?? new Set()).add(number));
  }));
  return [...users].filter(([, members]) => members.size > 1).map(([arc]) => arcs[arc]);
}

const bytes = [];
function number(value) {
  for (let rest = (value << 1 ^ value >> 31) >>> 0; ; rest >>>= 7) {
    bytes.push(rest > 127 ? rest & 127 | 128 : rest);
    if (rest <= 127) {
      return;
    }
  }
}

function set(parts, least) {
  const units = parts.map(part => part.map(([x, y]) => [Math.round(x * PER_DEGREE), Math.round(y * PER_DEGREE)])
    .filter((p, i, all) => i === 0 || p[0] !== all[i - 1][0] || p[1] !== all[i - 1][1])).filter(p => p.length >= least);
  number(units.length);
  for (const part of units) {
    number(part.length);
    let [x, y] = [0, 0];
    for (const [px, py] of part) {
      number(px - x);
      number(py - y);
      [x, y] = [px, py];
    }
  }
  console.log(units.length, 'parts', units.reduce((sum, part) => sum + part.length, 0), 'positions');
}

bytes.push(...Buffer.from('SBM1'));
const worldArcs = decoded(world).map(simplified);
set(polygons(world.objects.land).flat(1).map(ring => joined(worldArcs, ring)), 4);
set(borders(world, worldArcs, world.objects.countries), 2);
const stateArcs = decoded(states).map(simplified);
set(borders(states, stateArcs, states.objects.states), 2);
const packed = gzipSync(Buffer.from(bytes), { level: 9 });
writeFileSync(target, packed);
console.log(packed.length, 'bytes');
