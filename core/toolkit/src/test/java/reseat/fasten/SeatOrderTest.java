package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.fasten.TighteningPattern.Backing;
import reseat.given.TestDevice;
import reseat.model.Device;

class SeatOrderTest {

    @Test
    void startsAllByHandAndKeepsThePassesOfTheMaker() {
        Device device =
                new TestDevice()
                        .type("m2x4", "M2", 4)
                        .screw("a", TestDevice.seat("m2x4").at(0, 0).pass(2))
                        .screw("b", TestDevice.seat("m2x4").at(50, 0).pass(1))
                        .screw("c", TestDevice.seat("m2x4").at(50, 40))
                        .build();
        SeatOrder order = SeatOrder.of(device, List.of("a", "b", "c"), Backing.HARD);
        assertEquals(List.of("b", "a", "c"), order.passes().get(0).joints());
        assertEquals(List.of("b"), order.passes().get(1).joints());
        assertEquals(List.of("a"), order.passes().get(2).joints());
        assertEquals(4, order.passes().size());
        assertTrue(order.notes().isEmpty());
    }

    @Test
    void saysWhenPositionsAreMissing() {
        Device device =
                new TestDevice()
                        .type("m2x4", "M2", 4)
                        .screw("a", TestDevice.seat("m2x4").at(0, 0))
                        .screw("b", TestDevice.seat("m2x4"))
                        .build();
        SeatOrder order = SeatOrder.of(device, List.of("a", "b"), Backing.YIELDING);
        assertEquals(List.of("a", "b"), order.passes().get(1).joints());
        assertTrue(
                order.notes().get(0).contains("position of b is not known"), order.notes().get(0));
        assertThrows(
                IllegalArgumentException.class,
                () -> SeatOrder.of(device, List.of(), Backing.HARD));
    }
}
