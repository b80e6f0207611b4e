package wrong.spi;

public class Formats {
    String torque() {
        return String.format("%.2f", 0.06);
    }
}
