<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AngleWords</name>
    <message numerus="yes">
        <source>%1 turn(s)</source>
        <comment>number, also a fraction</comment>
        <translation>
            <numerusform>%1 turn</numerusform>
            <numerusform>%1 turns</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message numerus="yes">
        <source>%n cylinder(s)</source>
        <translation>
            <numerusform>%n cylinder</numerusform>
            <numerusform>%n cylinders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n character(s)</source>
        <translation>
            <numerusform>%n character</numerusform>
            <numerusform>%n characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bank(s)</source>
        <translation>
            <numerusform>%n bank</numerusform>
            <numerusform>%n banks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are %n firing gap(s) where %1. Nothing was changed; type one a cylinder, or a pattern that repeats evenly.</source>
        <translation>
            <numerusform>There is %n firing gap where %1. Nothing was changed; type one a cylinder, or a pattern that repeats evenly.</numerusform>
            <numerusform>There are %n firing gaps where %1. Nothing was changed; type one a cylinder, or a pattern that repeats evenly.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are wanted</source>
        <comment>firing gaps</comment>
        <translation>
            <numerusform>%n is wanted</numerusform>
            <numerusform>%n are wanted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s)</source>
        <translation>
            <numerusform>%n letter</numerusform>
            <numerusform>%n letters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n valve(s)</source>
        <translation>
            <numerusform>%n valve</numerusform>
            <numerusform>%n valves</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n intake(s)</source>
        <translation>
            <numerusform>%n intake</numerusform>
            <numerusform>%n intakes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exhaust(s)</source>
        <translation>
            <numerusform>%n exhaust</numerusform>
            <numerusform>%n exhausts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cylinder(s) do not stand evenly in %1. Nothing was changed; check the count or the rows.</source>
        <translation>
            <numerusform>%n cylinder does not stand evenly in %1. Nothing was changed; check the count or the rows.</numerusform>
            <numerusform>%n cylinders do not stand evenly in %1. Nothing was changed; check the count or the rows.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are %n pass(es). The passes are as they were; %1 is the most.</source>
        <translation>
            <numerusform>There is %n pass. The passes are as they were; %1 is the most.</numerusform>
            <numerusform>There are %n passes. The passes are as they were; %1 is the most.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointActWords</name>
    <message numerus="yes">
        <source>%n fastener(s) by feel, %1</source>
        <comment>count, pass</comment>
        <translation>
            <numerusform>%n fastener by feel, %1</numerusform>
            <numerusform>%n fasteners by feel, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>ticked %n fastener(s), %1</source>
        <comment>count, pass</comment>
        <translation>
            <numerusform>ticked %n fastener, %1</numerusform>
            <numerusform>ticked %n fasteners, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>took the tick(s) of %1 back</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>took the tick of %1 back</numerusform>
            <numerusform>took the ticks of %1 back</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointLines</name>
    <message numerus="yes">
        <source>until none moves, at most %n round(s)</source>
        <translation>
            <numerusform>until none moves, at most %n round</numerusform>
            <numerusform>until none moves, at most %n rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s)</source>
        <translation>
            <numerusform>%n fastener</numerusform>
            <numerusform>%n fasteners</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>row of %n</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>row of %n</numerusform>
            <numerusform>row of %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows of %1</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%n row of %1</numerusform>
            <numerusform>%n rows of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n around a circle</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%n around a circle</numerusform>
            <numerusform>%n around a circle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n around a cover</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%n around a cover</numerusform>
            <numerusform>%n around a cover</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n placed by hand</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%n placed by hand</numerusform>
            <numerusform>%n placed by hand</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointNames</name>
    <message numerus="yes">
        <source>Fastener(s) %1</source>
        <comment>numbers</comment>
        <translation>
            <numerusform>Fastener %1</numerusform>
            <numerusform>Fasteners %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>fastener(s) %1</source>
        <comment>numbers</comment>
        <translation>
            <numerusform>fastener %1</numerusform>
            <numerusform>fasteners %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointOpenWords</name>
    <message numerus="yes">
        <source>%n fastener(s) not tight</source>
        <translation>
            <numerusform>%n fastener not tight</numerusform>
            <numerusform>%n fasteners not tight</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s) not said to be new</source>
        <translation>
            <numerusform>%n fastener not said to be new</numerusform>
            <numerusform>%n fasteners not said to be new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fastener(s) used again</source>
        <translation>
            <numerusform>%n fastener used again</numerusform>
            <numerusform>%n fasteners used again</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointReader</name>
    <message numerus="yes">
        <source>until none moves, at most %n round(s)</source>
        <translation>
            <numerusform>until none moves, at most one round</numerusform>
            <numerusform>until none moves, at most %n rounds</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JointStateWords</name>
    <message numerus="yes">
        <source>%1 have crush washers, used once only. Say whether new ones are fitted</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%1 has a crush washer, used once only. Say whether a new one is fitted</numerusform>
            <numerusform>%1 have crush washers, used once only. Say whether new ones are fitted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 are used once only. Say whether new ones are fitted</source>
        <comment>fasteners</comment>
        <translation>
            <numerusform>%1 is used once only. Say whether a new one is fitted</numerusform>
            <numerusform>%1 are used once only. Say whether new ones are fitted</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MeasuringWords</name>
    <message numerus="yes">
        <source>%n day(s) after it ran</source>
        <translation>
            <numerusform>%n day after it ran</numerusform>
            <numerusform>%n days after it ran</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MeterWords</name>
    <message numerus="yes">
        <source>%n meter(s)</source>
        <translation>
            <numerusform>%n meter</numerusform>
            <numerusform>%n meters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>NextWords</name>
    <message numerus="yes">
        <source>%n turn(s)</source>
        <translation>
            <numerusform>%n turn</numerusform>
            <numerusform>%n turns</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OpenItemWords</name>
    <message numerus="yes">
        <source>%n point(s) not left</source>
        <translation>
            <numerusform>%n point not left</numerusform>
            <numerusform>%n points not left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) judged by an older spec</source>
        <translation>
            <numerusform>%n point judged by an older spec</numerusform>
            <numerusform>%n points judged by an older spec</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) left with no spec yet</source>
        <translation>
            <numerusform>%n point left with no spec yet</numerusform>
            <numerusform>%n points left with no spec yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) not comparable</source>
        <translation>
            <numerusform>%n point not comparable</numerusform>
            <numerusform>%n points not comparable</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) left by feel</source>
        <translation>
            <numerusform>%n point left by feel</numerusform>
            <numerusform>%n points left by feel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) set out of place</source>
        <translation>
            <numerusform>%n point set out of place</numerusform>
            <numerusform>%n points set out of place</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ToolWords</name>
    <message numerus="yes">
        <source>%n leaves, %1 to %2</source>
        <translation>
            <numerusform>%n leaf, %1 to %2</numerusform>
            <numerusform>%n leaves, %1 to %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TurningWords</name>
    <message numerus="yes">
        <source>%n turn(s)</source>
        <translation>
            <numerusform>%n turn</numerusform>
            <numerusform>%n turns</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>asleft::BenchSheetPane</name>
    <message numerus="yes">
        <source>%1 of %n box(es) filled in</source>
        <translation>
            <numerusform>%1 of %n box filled in</numerusform>
            <numerusform>%1 of %n boxes filled in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) are far from what the manual asks.</source>
        <translation>
            <numerusform>One value is far from what the manual asks.</numerusform>
            <numerusform>%n values are far from what the manual asks.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n box(es) are filled in and not logged.</source>
        <translation>
            <numerusform>One box is filled in and not logged.</numerusform>
            <numerusform>%n boxes are filled in and not logged.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>asleft::TightenPane</name>
    <message numerus="yes">
        <source>Tick all %n left of %1? The same again does it.</source>
        <translation>
            <numerusform>Tick all %n left of %1? The same again does it.</numerusform>
            <numerusform>Tick all %n left of %1? The same again does it.</numerusform>
        </translation>
    </message>
</context>
</TS>
