package reseat.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.spi.CommandOption.Kind;

/** What a command can say that it takes. */
class CommandOptionTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"length", "-l", "--Length", "--length-", "--", "--two words", "file", ""})
    void aNameIsAnOptionOrAParameter(String name) {
        assertThrows(
                IllegalArgumentException.class,
                () -> CommandOption.option(name, Kind.TEXT, "X", "Means."));
    }

    @Test
    void aParameterIsKnownByItsPlace() {
        assertTrue(CommandOption.parameter("STOCK-FILE", Kind.FILE, "Means.").isParameter());
        assertFalse(CommandOption.flag("--json", "Means.").isParameter());
    }

    @Test
    void onlyIdsAreGivenAsAList() {
        CommandOption part = CommandOption.option("--free", Kind.PART, "PART", "Means.");
        assertFalse(part.isListed());
        assertTrue(part.asRepeatable().isListed());
        assertFalse(
                CommandOption.option("--rows", Kind.FILE, "FILE", "Means.")
                        .asRepeatable()
                        .isListed());
    }

    @Test
    void whatContradictsItselfIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> CommandOption.flag("--json", "Means.").asRequired());
        assertThrows(
                IllegalArgumentException.class,
                () -> CommandOption.parameter("FILE", Kind.FILE, "Means.").orElse("x"));
        assertThrows(
                IllegalArgumentException.class,
                () -> CommandOption.choice("--as", "SHAPE", "Means.", List.of()));
        assertThrows(IllegalArgumentException.class, () -> CommandInfo.of());
    }

    @Test
    void aCommandTakesOneAfterTheOther() {
        CommandInfo info =
                CommandInfo.of("Does.")
                        .taking(CommandOption.flag("--a", "Means."))
                        .taking(List.of(CommandOption.flag("--b", "Means.")));

        assertEquals(
                List.of("--a", "--b"), info.options().stream().map(CommandOption::name).toList());
    }
}
