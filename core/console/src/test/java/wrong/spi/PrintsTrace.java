package wrong.spi;

public class PrintsTrace {
    void print(Exception e) {
        e.printStackTrace();
    }
}
