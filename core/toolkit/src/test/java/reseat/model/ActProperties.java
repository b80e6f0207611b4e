package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The stable id of an act says which act it is. */
class ActProperties {

    @Provide
    Arbitrary<Act> acts() {
        Arbitrary<String> ids =
                Combinators.combine(
                                Arbitraries.chars().alpha().numeric(),
                                Arbitraries.strings()
                                        .alpha()
                                        .numeric()
                                        .withChars('.', '_', '-')
                                        .ofMaxLength(63))
                        .as((first, rest) -> first + rest)
                        .filter(Ids::valid);
        return Arbitraries.oneOf(
                ids.map(id -> (Act) new Act.Prepared(id)),
                Combinators.combine(ids, ids).as((joint, way) -> (Act) new Act.Release(joint, way)),
                ids.list().ofMinSize(1).ofMaxSize(5).map(parts -> (Act) new Act.MoveParts(parts)));
    }

    @Property
    void anIdReadIsTheActThatHasIt(@ForAll("acts") Act act) {
        assertEquals(act, Act.parse(act.id()));
    }

    @Property
    void whatIsReadHasTheIdThatWasRead(@ForAll String start, @ForAll String rest) {
        for (String prefix : List.of("prepare:", "release:", "move:", start)) {
            String id = prefix + rest;
            try {
                assertEquals(id, Act.parse(id).id());
            } catch (IllegalArgumentException e) {
                assertEquals(true, String.valueOf(e.getMessage()).startsWith("found \""), id);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "lid",
                ":",
                "open:lid",
                "prepare:",
                "release:",
                "release:lid",
                "release:lid/",
                "release:/pull",
                "move:",
                "move:lid+",
                "move:+lid",
                "move:a++b",
                "Move:lid"
            })
    void whatIsNoIdIsRefusedWithWhatAnIdLooksLike(String text) {
        assertEquals(
                "found \""
                        + text
                        + "\", expected the id of an act: prepare:ID, release:JOINT/WAY or"
                        + " move:PART+PART",
                assertThrows(IllegalArgumentException.class, () -> Act.parse(text)).getMessage());
    }
}
