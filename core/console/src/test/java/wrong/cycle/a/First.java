package wrong.cycle.a;

public class First {
    wrong.cycle.b.Second known;
}
