package wrong.spi;

public class Dice {
    Object dice() {
        return new java.util.Random();
    }
}
