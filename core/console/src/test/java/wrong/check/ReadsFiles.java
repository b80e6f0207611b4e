package wrong.check;

public class ReadsFiles {
    foreign.Tree known;
}
