package reseat.spi;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TextTemplateTest {

    private static String written(String text, Map<String, String> answers) {
        return new TextTemplate(
                        "t",
                        "a text",
                        List.of(),
                        () -> new ByteArrayInputStream(text.getBytes(UTF_8)))
                .write(answers);
    }

    @Test
    void fillsGapsAndKeepsLinesByTheirConditions() {
        assertEquals(
                "id: lamp\nfan: yes\n",
                written(
                        "id: ${id}\nfan: yes #? fan=yes\nno fan: 1 #? fan!=yes\n",
                        Map.of("id", "lamp", "fan", "yes")));
    }

    @Test
    void spreadsSeatsAlongTheEdge() {
        assertEquals(
                "seats: {a: {x: 10, y: 10}, b: {x: 90, y: 10}, c: {x: 90, y: 90}, d:"
                        + " {x: 10, y: 90}}\n",
                written(
                        "seats: ${seats screws 10}\n",
                        Map.of("screws", "4", "width", "100", "height", "100")));
    }

    @Test
    void namesWhatHasNoValueOrAWrongOne() {
        assertEquals(
                "the text refers to id, which has no value",
                assertThrows(IllegalArgumentException.class, () -> written("${id}", Map.of()))
                        .getMessage());
        assertEquals(
                "screws must be a whole number, not many",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        written(
                                                "${seats screws 1}",
                                                Map.of(
                                                        "screws", "many", "width", "9", "height",
                                                        "9")))
                        .getMessage());
    }
}
