package reseat.internal.loader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplateTextTest {

    @Test
    void fillsGapsAndKeepsLinesByTheirConditions() {
        assertEquals(
                "id: lamp\nfan: yes\n",
                TemplateText.fill(
                        "id: ${id}\nfan: yes #? fan=yes\nno fan: 1 #? fan!=yes\n",
                        Map.of("id", "lamp", "fan", "yes")));
    }

    @Test
    void spreadsSeatsAlongTheEdge() {
        assertEquals(
                "seats: {a: {x: 10, y: 10}, b: {x: 90, y: 10}, c: {x: 90, y: 90}, d: {x: 10, y: 90}}\n",
                TemplateText.fill(
                        "seats: ${seats screws 10}\n",
                        Map.of("screws", "4", "width", "100", "height", "100")));
    }

    @Test
    void namesWhatHasNoValueOrAWrongOne() {
        assertEquals(
                "the text refers to id, which has no value",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> TemplateText.fill("${id}", Map.of()))
                        .getMessage());
        assertEquals(
                "screws must be a whole number, not many",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        TemplateText.fill(
                                                "${seats screws 1}",
                                                Map.of(
                                                        "screws", "many", "width", "9", "height",
                                                        "9")))
                        .getMessage());
    }
}
