package wrong.cycle.b;

public class Second {
    wrong.cycle.a.First known;
}
