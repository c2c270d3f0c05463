package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.Answered;

/** Every example that can be drawn, and jobs that are hard on a drawing. */
final class Jobs {

    private static final String INCHES = "\"units\": {\"length\": \"in\", \"area\": \"ft2\", \"mass\": \"lb\"}";
    private static final String FEET = "\"units\": {\"length\": \"ft\", \"area\": \"ft2\", \"mass\": \"lb\"}";
    private static final String METRES = "\"units\": {\"length\": \"m\", \"area\": \"m2\", \"mass\": \"kg\"}";

    private static final List<Job> ALL = build();

    private Jobs() {}

    static List<Job> all() {
        return ALL;
    }

    private static List<Job> build() {
        List<Job> jobs = new ArrayList<>();
        for (String example : List.of(
                "layouts-demo",
                "layouts-dormer",
                "layouts-gable",
                "layouts-hip",
                "layouts-shed",
                "takeoffs-dormer",
                "trims-shelter")) {
            jobs.add(Job.layout(example, Answered.example(example)));
        }
        for (String example : List.of("valleys-bay", "valleys-dormer", "valleys-square")) {
            jobs.add(Job.valley(example, Answered.example(example)));
        }
        jobs.add(Job.layout("boathouse, cut", boathouseCut()));
        jobs.add(Job.layout("bay in feet", bay(FEET, 1.0 / 12, "south", "")));
        jobs.add(Job.layout("bay in metres", bay(METRES, 0.0254, "south", "")));
        jobs.add(Job.layout("long names", bay(INCHES, 1, "the plane towards the lake ".repeat(3) + "and µ–½ 水", "")));
        jobs.add(Job.layout("many legs", bay(INCHES, 1, "south", manyLegs())));
        jobs.add(Job.layout("many pieces", bay(INCHES, 1, "south", manyPieces())));
        jobs.add(Job.valley("very long valley", corner("6:12", "8:12", "400'", "")));
        jobs.add(Job.valley(
                "many pan pieces", corner("6:12", "8:12", "400'", "\"pieceLength\": 24, \"shortestPiece\": 12")));
        jobs.add(Job.valley("very short valley", corner("6:12", "8:12", "3\\\"", "")));
        jobs.add(Job.valley("very flat valley", corner("1/8:12", "1/8:12", "20'", "")));
        jobs.add(Job.valley("very steep valley", corner("60:12", "60:12", "20'", "")));
        jobs.add(Job.valley("one steep side", corner("1:12", "48:12", "20'", "")));
        jobs.add(Job.valley(
                "tiny returns", corner("6:12", "6:12", "20'", "\"ribLeg\": \"1/2\", \"edgeReturn\": 0.125")));
        return jobs;
    }

    /** The demo house with stock to cut from. */
    private static String boathouseCut() {
        String demo = Answered.example("layouts-demo").strip();
        String cutting = """
                , "cutting": {"stock": [{"id": "ten-foot", "length": 120, "cost": 3150},
                  {"id": "thirty-foot", "length": 360, "cost": 9300},
                  {"id": "rest of the jetty", "kind": "rack", "length": 61.25, "item": "trim", "width": "7 3/16", "count": 2},
                  {"id": "coil 20", "kind": "coil"}],
                  "kerf": 0.125, "keepableOffcut": 18, "turning": "allowed"}}
                """;
        return demo.substring(0, demo.length() - 1)
                        .replace("\"ordering\": {", "\"ordering\": { \"formed\": \"onSite\",")
                + cutting;
    }

    /** An L of two wings with one hip and one valley, in any unit. */
    private static String bay(String units, double inch, String south, String more) {
        return """
                {%s, "roof": {"points": {%s},
                 "planes": [
                  {"id": "%s", "outline": ["A", "B", "F", "E"]},
                  {"id": "north", "outline": ["E", "F", "D", "C"]},
                  {"id": "east", "outline": ["B", "G", "H", "F"]},
                  {"id": "west", "outline": ["D", "F", "H", "K"]}]},
                 "panel": {"cover": %s}%s}
                """.formatted(
                        units,
                        String.join(
                                ", ",
                                point("A", inch, 0, 0, 0),
                                point("B", inch, 360, 0, 0),
                                point("C", inch, 0, 240, 0),
                                point("D", inch, 120, 240, 0),
                                point("E", inch, 0, 120, 60),
                                point("F", inch, 240, 120, 60),
                                point("G", inch, 360, 480, 0),
                                point("H", inch, 240, 480, 60),
                                point("K", inch, 120, 480, 0)),
                        south,
                        16 * inch,
                        more);
    }

    private static String point(String name, double inch, double x, double y, double z) {
        return "\"%s\": [%s, %s, %s]".formatted(name, x * inch, y * inch, z * inch);
    }

    private static String manyLegs() {
        return """
                , "trims": {"kinds": {"eave": {"profile": {"name": "%s",
                  "legs": [0.25, 9, 0.125, 0.125, 3, 0.25, 4, 0.5, 0.25, 2, 0.125, 6],
                  "bendsDeg": [90, -90, 90, -45, 45, -90, 90, 0, -90, 60, -60],
                  "hems": {"first": {"girth": 0.25, "gap": 0.0625}, "last": {"girth": 0.5}}}}}}
                """.formatted("a profile whose name is as long as it may be, and no longer.");
    }

    private static String manyPieces() {
        return """
                , "trims": {"stock": {"pieceLength": 12, "shortestPiece": 6}},
                  "valleyPan": {"pieceLength": 30, "shortestPiece": 12},
                  "cutting": {"stock": [{"id": "%s", "length": 2400, "cost": 100}]}
                """.formatted("a bar of the longest name there is ".repeat(2));
    }

    private static String corner(String one, String other, String length, String pan) {
        return """
                {%s, "corner": {"pitches": ["%s", "%s"], "planAngleDeg": 90, "length": "%s"}, "panel": {"cover": 18}, "valleyPan": {%s},
                 "climate": {"rainfall": 4}}
                """.formatted(INCHES, one, other, length, pan);
    }
}
