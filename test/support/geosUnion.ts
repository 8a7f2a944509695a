// Area, length of outline and number of holes of a union of polygons, by GEOS: an independent second opinion.

import initGeosJs from "geos-wasm";
import type { Ring } from "../../src/geom/ring.ts";

export interface UnionMeasure {
  readonly area: number;
  readonly perimeter: number;
  readonly holes: number;
  readonly bodies: number;
}

const GRID = 1e-6; // mm; without it rounding leaves slits between pieces that share an edge

/** Loads GEOS once; the function it gives measures the union of simple polygons. */
export async function loadGeosUnion(): Promise<(rings: readonly Ring[]) => UnionMeasure> {
  const geos = await initGeosJs();
  const { Module } = geos;
  const reader = geos.GEOSWKTReader_create();
  const value = Module._malloc(8);
  const measure = (of: (geometry: number, out: number) => number, geometry: number) => {
    of(geometry, value);
    return Number(Module.getValue(value, "double"));
  };
  return (rings) => {
    const wkt = `GEOMETRYCOLLECTION(${rings.map(polygonText).join(",")})`;
    const text = Module._malloc(wkt.length + 1);
    Module.stringToUTF8(wkt, text, wkt.length + 1);
    const input = geos.GEOSWKTReader_read(reader, text);
    const union = geos.GEOSUnaryUnionPrec(input, GRID);
    if (union === 0) throw new Error("GEOS could not unite the polygons");
    const bodies = geos.GEOSGetNumGeometries(union);
    let holes = 0;
    for (let i = 0; i < bodies; i++) holes += geos.GEOSGetNumInteriorRings(geos.GEOSGetGeometryN(union, i));
    const area = measure(geos.GEOSArea, union);
    const perimeter = measure(geos.GEOSLength, union);
    for (const geometry of [input, union]) geos.GEOSGeom_destroy(geometry);
    Module._free(text);
    return { area, perimeter, holes, bodies };
  };
}

/** Whether a ring is one that GEOS can unite: it neither crosses nor touches itself. */
export async function loadGeosValid(): Promise<(ring: Ring) => boolean> {
  const geos = await initGeosJs();
  const { Module } = geos;
  const reader = geos.GEOSWKTReader_create();
  return (ring) => {
    const wkt = polygonText(ring);
    const text = Module._malloc(wkt.length + 1);
    Module.stringToUTF8(wkt, text, wkt.length + 1);
    const polygon = geos.GEOSWKTReader_read(reader, text);
    const isValid = geos.GEOSisValid(polygon) === 1;
    geos.GEOSGeom_destroy(polygon);
    Module._free(text);
    return isValid;
  };
}

function polygonText(ring: Ring): string {
  const closed = [...ring, ring[0]!];
  return `POLYGON((${closed.map(([x, y]) => `${x} ${y}`).join(",")}))`;
}
