package wrong.spi;

public class AsksTheTime {
    long now() {
        return System.currentTimeMillis();
    }
}
