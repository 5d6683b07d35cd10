package org.straddle.publish.site;

import java.util.List;

import org.straddle.outlook.StationPart;

/**
 * What stands on the page.
 *
 * @param file name of the file without ending; letters, digits and hyphens
 * @param held stands across the page while the team is not cleared; empty when it is
 * @param station the parts of the station and their squares; empty within one square
 */
public record SiteSheet(String file, String title, String held, List<Part> parts, List<StationPart> station, String foot) {

    /** A heading and its lines. */
    public record Part(String heading, List<String> lines) {

        public Part {
            lines = List.copyOf(lines);
        }
    }

    public SiteSheet {
        parts = List.copyOf(parts);
        station = List.copyOf(station);
    }
}
