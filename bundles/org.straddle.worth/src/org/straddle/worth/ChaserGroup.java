package org.straddle.worth;

import java.util.Optional;

import org.straddle.model.Region;
import org.straddle.sky.prediction.Area;

/**
 * Chasers who live in one part of the world, so that a pass serves them alike.
 *
 * @param region the region of the event that they are; empty for others, such as those of a list
 * @param name   of the region or square; empty when nobody knows where they live
 * @param home   where they live; empty when nobody knows: then they are taken to live where the stations are, which is
 *               more than true
 * @param needs  which squares they still need
 */
public record ChaserGroup(Optional<Region> region, String name, Optional<Area> home, Needs needs) {
}
