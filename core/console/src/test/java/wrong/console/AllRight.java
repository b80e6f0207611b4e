package wrong.console;

public class AllRight {
    void print() {
        System.out.println(java.time.Instant.now());
    }
}
