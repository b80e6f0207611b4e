package reseat.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.fasten.SeatOrder;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Prepare;
import reseat.model.Seat;
import reseat.model.Way;
import reseat.plan.Advice;
import reseat.plan.Fastening;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;

/** The numbered steps of a page, out and back. */
final class Steps {

    private final Html html;
    private final Words words;
    private final Cautions cautions;
    private final Device device;
    private int number;
    private String heading = "";

    Steps(Html html, Words words, Cautions cautions) {
        this.html = html;
        this.words = words;
        this.cautions = cautions;
        this.device = words.device();
    }

    void teardown(Plan plan, List<List<Advice>> notes) {
        int at = 0;
        while (at < plan.acts().size()) {
            CostedAct first = plan.acts().get(at);
            List<Integer> group = new ArrayList<>(List.of(at++));
            while (at < plan.acts().size()
                    && plan.acts().get(at).tool().equals(first.tool())
                    && plan.acts().get(at).posture().equals(first.posture())
                    && alike(first.act(), plan.acts().get(at).act())) {
                group.add(at++);
            }
            if (first.act() instanceof Act.Prepared) {
                heading("First");
            } else {
                heading(first.posture(), first.tool());
            }
            List<Act> acts = group.stream().map(i -> plan.acts().get(i).act()).toList();
            List<Advice> advice = Cautions.of(notes, group);
            begin(advice, out(acts));
            cautions.with(advice);
            html.raw("</div>");
        }
    }

    void rebuild(Rebuild rebuild, List<List<Advice>> notes) {
        int at = 0;
        while (at < rebuild.acts().size()) {
            tests(rebuild, at);
            RebuildAct first = rebuild.acts().get(at);
            int from = at;
            Optional<Fastening> fastening =
                    rebuild.fastenings().stream().filter(f -> f.first() == from).findFirst();
            int to = fastening.map(Fastening::last).orElse(at);
            List<Integer> group = new ArrayList<>();
            while (at <= to) {
                group.add(at++);
            }
            if (first.act() instanceof Act.Prepared prepared
                    && prepare(prepared).restore().isEmpty()) {
                continue;
            }
            if (first.kind() == RebuildAct.Kind.UNDO_PREPARE) {
                heading("Undo the preparations");
            } else {
                heading(first.posture(), first.tool());
            }
            List<Advice> advice = Cautions.of(notes, group);
            List<RebuildAct> acts = group.stream().map(rebuild.acts()::get).toList();
            begin(advice, back(acts));
            details(acts, fastening);
            cautions.with(advice);
            html.raw("</div>");
        }
        tests(rebuild, at);
    }

    private void tests(Rebuild rebuild, int before) {
        for (PlacedTest test : rebuild.tests()) {
            if (test.before() == before) {
                heading(test.closing().isPresent() ? "Test before closing" : "Test");
                begin(List.of(), Words.stop(test.test().text()));
                html.raw("</div>");
            }
        }
    }

    private void begin(List<Advice> advice, String sentence) {
        html.raw("<div class=\"step\">");
        cautions.before(advice);
        html.raw("<span class=\"no\">" + ++number + "<span class=\"box\"></span></span>")
                .element("p", "", sentence);
    }

    private void heading(String posture, String tool) {
        heading(Words.posture(posture) + " \u00b7 " + words.tool(tool));
    }

    private void heading(String now) {
        if (!now.equals(heading)) {
            heading = now;
            html.element("h3", "", now);
        }
    }

    private String out(List<Act> acts) {
        Act first = acts.get(0);
        if (first instanceof Act.Prepared prepared) {
            return Words.stop(prepare(prepared).text());
        }
        if (first instanceof Act.Release release) {
            return said(manipulation(release).verb(), "Release", joints(acts));
        }
        List<String> parts = ((Act.MoveParts) first).parts();
        String verb = device.manipulation(device.move(parts.get(0)).kind()).verb();
        return (verb.isEmpty() ? "Lift off" : verb)
                + (parts.size() > 1 ? ", together: " : ": ")
                + words.parts(parts)
                + ".";
    }

    private String back(List<RebuildAct> acts) {
        Act first = acts.get(0).act();
        if (first instanceof Act.Prepared prepared) {
            return Words.stop(prepare(prepared).restore());
        }
        if (first instanceof Act.Release release) {
            return said(
                    manipulation(release).restoreVerb(),
                    "Make again",
                    joints(acts.stream().map(RebuildAct::act).toList()));
        }
        List<String> parts = ((Act.MoveParts) first).parts();
        String verb = device.manipulation(device.move(parts.get(0)).kind()).restoreVerb();
        return (verb.isEmpty() ? "Set in place" : verb)
                + (parts.size() > 1 ? ", together: " : ": ")
                + words.parts(parts)
                + ".";
    }

    private String said(String verb, String otherwise, List<String> joints) {
        Map<String, Integer> screws = new LinkedHashMap<>();
        joints.forEach(
                id ->
                        device.joint(id)
                                .seat()
                                .ifPresent(seat -> screws.merge(seat.screw(), 1, Integer::sum)));
        List<String> counts = new ArrayList<>();
        screws.forEach((type, n) -> counts.add(n + " \u00d7 " + type));
        return (verb.isEmpty() ? otherwise : verb)
                + ": "
                + (counts.isEmpty() ? "" : String.join(", ", counts) + " at ")
                + words.joints(joints)
                + ".";
    }

    private static List<String> joints(List<Act> acts) {
        return acts.stream().map(act -> ((Act.Release) act).joint()).toList();
    }

    private void details(List<RebuildAct> acts, Optional<Fastening> fastening) {
        RebuildAct first = acts.get(0);
        if (!first.brings().isEmpty()) {
            cautions.detail("Bring alongside first: " + words.parts(first.brings()));
        }
        if (!first.fresh().isEmpty()) {
            cautions.detail("New ones go in: " + words.parts(first.fresh()));
        }
        if (fastening.isPresent()) {
            fastening(fastening.get());
        } else if (first.act() instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            String own = way(release).restore();
            String restore = own.isEmpty() ? device.kindOf(joint).restore() : own;
            if (!restore.isEmpty()) {
                cautions.detail(restore);
            }
        }
        for (RebuildAct act : acts) {
            for (ConsumableUse use : act.consumes()) {
                cautions.detail("Uses " + words.use(use));
            }
        }
        if (first.dwellMs() > 0) {
            cautions.detail("Full strength after " + Words.time(first.dwellMs()));
        }
    }

    private void fastening(Fastening fastening) {
        for (SeatOrder.Pass pass : fastening.order().passes()) {
            cautions.detail(
                    switch (pass.stage()) {
                                case START_BY_HAND -> "By hand, two or three turns: ";
                                case GO_ROUND -> "Once round at the full torque: ";
                                default ->
                                        "To "
                                                + Math.round(pass.torqueShare() * 100)
                                                + " % of the torque: ";
                            }
                            + words.joints(pass.joints()));
        }
        Map<String, List<String>> torques = new LinkedHashMap<>();
        for (String id : fastening.joints()) {
            Seat seat = device.joint(id).seat().orElseThrow();
            String torque =
                    seat.torqueNm().isEmpty()
                            ? "not given by the maker"
                            : Words.number(seat.torqueNm().getAsDouble())
                                    + " N\u00b7m"
                                    + (seat.torqueSource().isEmpty()
                                            ? ""
                                            : " (" + seat.torqueSource() + ")");
            torques.computeIfAbsent(torque, t -> new ArrayList<>()).add(id);
        }
        torques.forEach(
                (torque, ids) ->
                        cautions.detail(
                                "Torque"
                                        + (torques.size() > 1 ? " of " + words.joints(ids) : "")
                                        + ": "
                                        + torque));
    }

    private boolean alike(Act one, Act other) {
        if (!(one instanceof Act.Release a) || !(other instanceof Act.Release b)) {
            return false;
        }
        Joint first = device.joint(a.joint());
        Joint second = device.joint(b.joint());
        return first.kind().equals(second.kind())
                && first.holds().equals(second.holds())
                && way(a).kind().equals(way(b).kind())
                && first.seat().map(Seat::screw).equals(second.seat().map(Seat::screw));
    }

    private Kind manipulation(Act.Release release) {
        return device.manipulation(way(release).kind());
    }

    private Way way(Act.Release release) {
        return Objects.requireNonNull(device.joint(release.joint()).ways().get(release.way()));
    }

    private Prepare prepare(Act.Prepared prepared) {
        return Objects.requireNonNull(device.prepares().get(prepared.prepare()));
    }
}
