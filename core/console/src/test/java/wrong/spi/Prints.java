package wrong.spi;

public class Prints {
    void print() {
        System.out.println();
    }
}
