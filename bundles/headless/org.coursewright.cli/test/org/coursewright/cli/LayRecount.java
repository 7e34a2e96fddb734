package org.coursewright.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.StreamSupport;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/**
 * Recomputes from the JSON of a layout alone all that can be: that runs add up, joints are in range, counts agree, and
 * how many laps are short. Shares no code with what wrote it.
 */
final class LayRecount {

    private static final BigDecimal HALF_OF_SIXTH_DECIMAL = new BigDecimal("0.0000005");

    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> all = new TreeMap<>();
    private int runs;

    static LayRecount of(JsonObject json) {
        LayRecount recount = new LayRecount();
        recount.expect("schema", json.get("schema").getAsString().equals("coursewright.lay/1"));
        objects(json, "walls").forEach(recount::recountWall);
        recount.expectCounts("totals", json.getAsJsonObject("totals"), recount.all);
        return recount;
    }

    /** @return what does not agree, one line each */
    List<String> faults() {
        return faults;
    }

    /** @return how many runs were recomputed */
    int runs() {
        return runs;
    }

    private void recountWall(JsonObject wall) {
        Map<String, Integer> counts = new TreeMap<>();
        List<List<RecountedJoint>> joints = new ArrayList<>();
        for (JsonObject course : objects(wall, "courses")) {
            List<RecountedJoint> ofCourse = new ArrayList<>();
            for (JsonObject run : objects(course, "runs")) {
                String where = "%s course %s from %s".formatted(wall.get("mark"), course.get("course"),
                        run.get("from"));
                recountRun(where, run, wall.getAsJsonObject("rule"), counts, ofCourse);
            }
            joints.add(ofCourse);
        }
        String mark = wall.get("mark").getAsString();
        expectCounts(mark, wall, counts);
        expect(mark + " cutPieces", wall.get("cutPieces").getAsInt() == counts.getOrDefault("cut", 0));
        expect(mark + " lowerBound", wall.get("lowerBound").getAsInt() <= wall.get("cutPieces").getAsInt());
        int straight = straightJoints(objects(wall, "courses"));
        expect("%s straightJoints %s, recounted %d".formatted(mark, wall.get("straightJoints"), straight),
                wall.get("straightJoints").getAsInt() == straight);
        int shortLaps = shortLaps(joints, number(wall.getAsJsonObject("rule"), "leastLap")) - straight;
        expect("%s lapViolations %s, recomputed %d".formatted(mark, wall.get("lapViolations"), shortLaps),
                wall.get("lapViolations").getAsInt() == shortLaps);
        expect(mark + " shortLaps", elements(wall, "shortLaps").size() == shortLaps);
        int explained = objects(wall, "cutReasons").stream().flatMap(reason -> objects(reason, "causes").stream())
                .mapToInt(cause -> cause.get("cuts").getAsInt()).sum();
        expect("%s cutReasons for %d cuts".formatted(mark, explained), explained == counts.getOrDefault("cut", 0));
    }

    private void recountRun(String where, JsonObject run, JsonObject rule, Map<String, Integer> counts,
            List<RecountedJoint> joints) {
        runs++;
        List<BigDecimal> pieces = elements(run, "pieces").stream().map(JsonElement::getAsBigDecimal).toList();
        List<String> kinds = elements(run, "kinds").stream().map(JsonElement::getAsString).toList();
        kinds.forEach(kind -> {
            counts.merge(kind, 1, Integer::sum);
            all.merge(kind, 1, Integer::sum);
        });
        expect(where + " kinds", kinds.size() == pieces.size() && !pieces.isEmpty());
        int jointEnds = (isJoint(run, "startsWith") ? 1 : 0) + (isJoint(run, "endsWith") ? 1 : 0);
        int count = run.get("jointCount").getAsInt();
        expect(where + " jointCount", count == pieces.size() - 1 + jointEnds);
        BigDecimal rest = number(run, "to").subtract(number(run, "from"))
                .subtract(pieces.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        BigDecimal many = BigDecimal.valueOf(count);
        if (count == 0) {
            expect(where + " fills exactly", rest.signum() == 0 && !run.has("joint"));
            return;
        }
        BigDecimal error = number(run, "joint").multiply(many).subtract(rest).abs();
        expect(where + " adds up", error.compareTo(HALF_OF_SIXTH_DECIMAL.multiply(many)) <= 0);
        expect(where + " joint in range", rest.compareTo(number(rule, "leastJoint").multiply(many)) >= 0
                && rest.compareTo(number(rule, "mostJoint").multiply(many)) <= 0);
        joints.addAll(RecountedJoint.ofRun(number(run, "from"), pieces, rest, count, isJoint(run, "startsWith"),
                isJoint(run, "endsWith")));
    }

    /** Pairs of runs of consecutive courses that begin, or end, with a joint at the same place. */
    private static int straightJoints(List<JsonObject> courses) {
        int found = 0;
        for (int course = 1; course < courses.size(); course++) {
            for (JsonObject above : objects(courses.get(course), "runs")) {
                for (JsonObject below : objects(courses.get(course - 1), "runs")) {
                    found += meetStraight(below, above, "startsWith", "from") ? 1 : 0;
                    found += meetStraight(below, above, "endsWith", "to") ? 1 : 0;
                }
            }
        }
        return found;
    }

    private static boolean meetStraight(JsonObject below, JsonObject above, String end, String at) {
        return isJoint(below, end) && isJoint(above, end) && number(below, at).compareTo(number(above, at)) == 0;
    }

    private static int shortLaps(List<List<RecountedJoint>> courses, BigDecimal leastLap) {
        int found = 0;
        for (int course = 1; course < courses.size(); course++) {
            for (RecountedJoint joint : courses.get(course)) {
                found += courses.get(course - 1).stream().filter(below -> joint.lapsLess(below, leastLap)).count();
            }
        }
        return found;
    }

    private void expectCounts(String where, JsonObject stated, Map<String, Integer> counted) {
        for (String kind : List.of("whole", "special", "cut")) {
            expect("%s %s %s, recounted %s".formatted(where, kind, stated.get(kind), counted.get(kind)),
                    stated.get(kind).getAsInt() == counted.getOrDefault(kind, 0));
        }
    }

    private void expect(String what, boolean holds) {
        if (!holds) {
            faults.add(what);
        }
    }

    private static boolean isJoint(JsonObject run, String end) {
        return run.get(end).getAsString().equals("joint");
    }

    private static BigDecimal number(JsonObject object, String name) {
        return object.get(name).getAsBigDecimal();
    }

    private static List<JsonObject> objects(JsonObject object, String name) {
        return elements(object, name).stream().map(JsonElement::getAsJsonObject).toList();
    }

    private static List<JsonElement> elements(JsonObject object, String name) {
        JsonArray array = object.getAsJsonArray(name);
        return StreamSupport.stream(array.spliterator(), false).toList();
    }
}
