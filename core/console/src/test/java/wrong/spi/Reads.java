package wrong.spi;

public class Reads {
    String text(byte[] bytes) {
        return new String(bytes);
    }
}
