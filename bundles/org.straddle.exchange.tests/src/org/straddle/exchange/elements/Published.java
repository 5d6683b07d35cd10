package org.straddle.exchange.elements;

/** Element sets that others published, and invented ones. */
public final class Published {

    /** Verification object 00005 of Vallado et al., AIAA 2006-6753. */
    public static final String L1_00005 = "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753";
    public static final String L2_00005 = "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667";

    /** Object 23581 as CCSDS 502.0-B-3 prints it in annex G, beside the message of the same elements. */
    public static final String L1_23581 = "1 23581U 95025A   07064.44075725 -.00000113  00000-0  10000-3 0  9250";
    public static final String L2_23581 = "2 23581   3.0539  81.7939 0005013 249.2363 150.1602  1.00273272 43169";

    /** The message of CCSDS 502.0-B-3, annex G, with the object's number for its name and another originator. */
    public static final String KVN_23581 = """
            CCSDS_OMM_VERS = 3.0
            CREATION_DATE = 2007-065T16:00:00
            ORIGINATOR = DEMO/A

            OBJECT_NAME = 23581
            OBJECT_ID = 1995-025A
            CENTER_NAME = EARTH
            REF_FRAME = TEME
            TIME_SYSTEM = UTC
            MEAN_ELEMENT_THEORY = SGP/SGP4

            EPOCH = 2007-064T10:34:41.4264
            MEAN_MOTION = 1.00273272
            ECCENTRICITY = 0.0005013
            INCLINATION = 3.0539
            RA_OF_ASC_NODE = 81.7939
            ARG_OF_PERICENTER = 249.2363
            MEAN_ANOMALY = 150.1602
            GM = 398600.8
            EPHEMERIS_TYPE = 0
            CLASSIFICATION_TYPE = U
            NORAD_CAT_ID = 23581
            ELEMENT_SET_NO = 0925
            REV_AT_EPOCH = 4316
            BSTAR = 0.0001
            MEAN_MOTION_DOT = -0.00000113
            MEAN_MOTION_DDOT = 0.0
            """;

    /** Invented: number beyond a TLE, epoch with nine digits, a name with every trap. */
    public static final String KVN_DEMO = """
            CCSDS_OMM_VERS = 2.0
            COMMENT invented
            CREATION_DATE =
            ORIGINATOR = DEMO

            OBJECT_NAME = Tern-1 = "x" [P] <&> (demo)
            OBJECT_ID = UNKNOWN
            CENTER_NAME = EARTH
            REF_FRAME = TEME
            TIME_SYSTEM = UTC
            MEAN_ELEMENT_THEORY = SGP4

            EPOCH = 2026-06-20T10:02:30.123456789
            MEAN_MOTION = 15.11169557 [rev/day]
            ECCENTRICITY = .00147468
            INCLINATION = 97.5103 [deg]
            RA_OF_ASC_NODE = -112.25 [deg]
            ARG_OF_PERICENTER = 169.6213 [deg]
            MEAN_ANOMALY = 190.5325 [deg]
            USER_DEFINED_EARTH_MODEL = any
            NORAD_CAT_ID = 799500001
            BSTAR = .39221734E-3 [1/ER]
            MEAN_MOTION_DOT = .6535E-4 [rev/day**2]
            """;

    private Published() {
    }

    public static String xml(String kvn) {
        StringBuilder xml = new StringBuilder();
        for (String line : kvn.lines().toList()) {
            int equals = line.indexOf('=');
            if (line.startsWith("CCSDS_OMM_VERS")) {
                xml.append("<omm id=\"CCSDS_OMM_VERS\" version=\"").append(line.substring(equals + 1).strip())
                        .append("\">\n<header>\n");
            } else if (equals > 0 && !line.startsWith("USER_DEFINED")) {
                String key = line.substring(0, equals).strip();
                String value = line.substring(equals + 1).strip();
                String units = "";
                if (OmmUnits.has(key) && value.endsWith("]")) {
                    units = " units=\"" + value.substring(value.indexOf('[') + 1, value.length() - 1) + "\"";
                    value = value.substring(0, value.indexOf('[')).strip();
                }
                xml.append(switch (key) {
                    case "OBJECT_NAME" -> "</header>\n<body>\n<segment>\n<metadata>\n";
                    case "EPOCH" -> "</metadata>\n<data>\n<meanElements>\n";
                    case "EPHEMERIS_TYPE" -> "</meanElements>\n<tleParameters>\n";
                    default -> "";
                }).append('<').append(key).append(units).append('>')
                        .append(value.replace("&", "&amp;").replace("<", "&lt;")).append("</").append(key).append(">\n");
            }
        }
        String end = xml.indexOf("<tleParameters>") < 0 ? "</meanElements>" : "</tleParameters>";
        return xml.append(end).append("\n</data>\n</segment>\n</body>\n</omm>\n").toString();
    }

    public static String json(String kvn) {
        StringBuilder json = new StringBuilder("{\n");
        kvn.lines().filter(line -> line.matches("[A-Z_]+ = .*") && !line.startsWith("CCSDS")).forEach(line -> {
            String[] pair = line.split(" = ", 2);
            String value = OmmUnits.has(pair[0]) ? pair[1].replaceAll(" \\[.*", "") : pair[1];
            json.append('"').append(pair[0]).append("\": \"").append(value.replace("\"", "\\\"")).append("\",\n");
        });
        return json.append("\"EXTRA\": null\n}").toString();
    }

    public static String csv(String kvn) {
        StringBuilder header = new StringBuilder("EXTRA");
        StringBuilder row = new StringBuilder();
        kvn.lines().filter(line -> line.matches("[A-Z_]+ = .*") && !line.startsWith("CCSDS")).forEach(line -> {
            String[] pair = line.split(" = ", 2);
            String value = OmmUnits.has(pair[0]) ? pair[1].replaceAll(" \\[.*", "") : pair[1];
            header.append(',').append(pair[0]);
            row.append(",\"").append(value.replace("\"", "\"\"")).append('"');
        });
        return header.append('\n').append(row).append('\n').toString();
    }
}
