package wrong.spi;

public class Encodes {
    byte[] bytes(String text) {
        return text.getBytes();
    }
}
