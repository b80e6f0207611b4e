package reseat.internal.files;

import java.util.List;
import java.util.Objects;
import reseat.internal.files.Chain.Link;
import reseat.model.Origin;

/**
 * A fact that may be the wrong one of those that make something impossible. Facts that the seats of
 * one entry share are one fact.
 */
final class Doubt {

    private static final int HOLDS = 10_000;

    private final Link link;
    private final Draft draft;
    private final Places places;

    Doubt(Link link, Draft draft, Places places) {
        this.link = link;
        this.draft = draft;
        this.places = places;
    }

    Link link() {
        return link;
    }

    private String pointer(boolean joint, String id) {
        return (joint ? "/joints/" : "/parts/") + id;
    }

    /** Returns where the fact is stated. */
    Origin at() {
        String about = link.about().id();
        String of = link.obstacle().of();
        return switch (link.obstacle().fact()) {
            case COVER -> under(link.about().joint(), about, of);
            case HOLD -> places.at(pointer(true, of) + "/holds");
            case LETS_GO -> places.at(pointer(true, about) + "/gives");
            case NEED, NO_ISOLATOR -> places.at(pointer(link.about().joint(), about) + "/needs");
            case STRAIN -> places.at(pointer(true, about) + "/ways");
            case MANNER -> places.at(pointer(false, about) + "/move");
        };
    }

    private Origin under(boolean joint, String id, String cover) {
        List<String> under =
                joint
                        ? Objects.requireNonNull(draft.joints.get(id)).under()
                        : Objects.requireNonNull(draft.parts.get(id)).under();
        return places.at(pointer(joint, id) + "/under/" + under.indexOf(cover));
    }

    /** Returns a copy of the facts without this one. */
    Numbered leftOut(Numbered all) {
        Numbered copy = all.copy();
        Origin here = at();
        String about = link.about().id();
        String of = link.obstacle().of();
        switch (link.obstacle().fact()) {
            case COVER -> {
                if (!link.about().joint()) {
                    copy.covers.clear(all.of(about), all.of(of));
                    break;
                }
                for (int j = 0; j < all.joints.size(); j++) {
                    String id = all.joints.get(j).id();
                    if (all.hiders.get(j, all.of(of))
                            && (id.equals(about) || under(true, id, of).equals(here))) {
                        copy.hiders.clear(j, all.of(of));
                    }
                }
            }
            case HOLD -> {
                for (int j = 0; j < all.joints.size(); j++) {
                    String id = all.joints.get(j).id();
                    if (id.equals(of) || places.at(pointer(true, id) + "/holds").equals(here)) {
                        copy.loose[j] = true;
                    }
                }
            }
            case NEED, NO_ISOLATOR -> {
                if (!link.about().joint()) {
                    copy.partNeeds.set(all.of(about), List.of());
                    break;
                }
                for (int j = 0; j < all.joints.size(); j++) {
                    String id = all.joints.get(j).id();
                    if (id.equals(about) || places.at(pointer(true, id) + "/needs").equals(here)) {
                        copy.needs.set(
                                j,
                                all.needs.get(j).stream()
                                        .filter(need -> !need.equals(of))
                                        .toList());
                    }
                }
            }
            case LETS_GO -> copy.onlyLetsGo[all.ofJoint(about)] = false;
            case STRAIN -> copy.strains.set(all.ofJoint(about), List.of());
            case MANNER -> copy.manners.set(all.of(about), all.manners.get(all.of(of)));
        }
        return copy;
    }

    /**
     * Returns how many other facts say something like it. What many facts say is rarely the one
     * that is wrong; facts about joints count as more common than covers.
     */
    int alike(Numbered all) {
        int alike = 0;
        String of = link.obstacle().of();
        switch (link.obstacle().fact()) {
            case COVER -> {
                for (int j = 0; j < all.joints.size(); j++) {
                    alike += all.hiders.get(j, all.of(of)) ? 1 : 0;
                }
                for (int p = 0; p < all.parts.size(); p++) {
                    alike += all.covers.get(p, all.of(of)) ? 1 : 0;
                }
            }
            // covers are what people most often get wrong
            case HOLD -> alike = HOLDS;
            case NEED, NO_ISOLATOR, STRAIN, LETS_GO -> alike = HOLDS - 1;
            case MANNER ->
                    alike =
                            (int)
                                    all.manners.stream()
                                            .filter(
                                                    all.manners.get(all.of(link.about().id()))
                                                            ::equals)
                                            .count();
        }
        return alike;
    }
}
