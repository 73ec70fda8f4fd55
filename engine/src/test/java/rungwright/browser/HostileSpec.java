package rungwright.browser;

/**
 * A program in which every name and text is markup, script, or a word that scripts give a meaning of their
 * own.
 */
final class HostileSpec {
    static final String TEXT = """
            program: "</title></script><script>window.hacked = 1</script>"
            version: 1
            goal: "<img src=x onerror='window.hacked = 2'> done"
            for: "<b onclick=alert(1)>all</b> & sundry"
            cautions: ["</style></script><script>window.hacked = 3</script>", "Ask &lt;first&gt;",
              "</script ><script >window.hacked = 8</script >"]
            sources: ["<a href='javascript:window.hacked = 4'>paper</a>", "<!-- "]
            trainee:
              constructor: { values: 1 to 5 }
            place:
              assess:
                toString: { values: 0 to 10, ask: "<script>window.hacked = 5</script> How many?" }
              rules:
                - { when: { toString: at least 5 }, to: stage </script> }
                - { when: { toString: under 5 }, to: stage __proto__ }
            measures:
              __proto__: { values: 0 to 9, each: set, take: highest, ask: "</label><script>1</script> Reps?" }
              hasOwnProperty: { values: ["yes </i>", "no"] }
              pain: { values: 0 to 10, if not logged: 0 }
              change:
                from: __proto__ - previous __proto__
                if none: 0
            ladders:
              valueOf: { rungs: ["<rung>", "__proto__", "]]>"] }
            stop:
              - when: { pain: at least 6 }
                name: __proto__
                say: "<script>window.hacked = 6</script> Stop & see somebody."
                once cleared: same place
            stages:
              __proto__:
                ladder: valueOf
                do: { exercise: "</script><script>window.hacked = 7</script>", sets: 3, reps: 5 }
                advance:
                  - { when: { __proto__: at least 6 }, in a row: 2, name: constructor,
                          say: "</p><script>1</script>" }
                hold: otherwise
              </script>:
                advance: { when: { change: at least 2, hasOwnProperty: "yes </i>" },
                        say: "${1} `x` \\\\u003c" }
                fall back: { when: { __proto__: at most 2, change: under 2 }, to: stage __proto__ }
                hold: otherwise
            """;

    private HostileSpec() {
    }
}
