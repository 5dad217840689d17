#!/usr/bin/env perl
# sentences.pl ROOT: every sentence the sources of ROOT say to a person can be translated. Prints each breach and fails if there is one.
# sentences.pl --names: the name of every rule, for the test of this test.
# What is called is counted here, what can be translated is what lupdate extracts: a call it does not see is a sentence that stays English.
use strict;
use warnings;
use Cwd qw(realpath);

my @names = qw(not-extracted no-literal no-context said-elsewhere plural-by-hand plural-untold lupdate-says);
if ($ARGV[0] eq '--names') {
    print "$_\n" for @names;
    exit 0;
}

my $root = realpath($ARGV[0]);
chdir $root or die "no $root";
my $breaches = 0;

sub breach {
    my ($rule, $text) = @_;
    print "$rule: $text\n";
    ++$breaches;
}

# A source without its comments, twice: as it is, and with a dot for every character inside a string.
sub stripped {
    my ($text) = @_;
    my ($code, $mask) = ('', '');
    while ($text =~ m{\G(?://[^\n]*|/\*.*?\*/|R"([^\s()\\]*)\(.*?\)\1"|"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)+'|\d[\w.']*|[^/"'R\d]+|.)}gs) {
        my $token = $&;
        if ($token =~ m{^/[/*]}) {
            $token =~ s/[^\n]/ /g;
            $code .= $token;
            $mask .= $token;
            next;
        }
        $code .= $token;
        if ($token =~ /^(?:R?"|'.)/s) {
            my $inside = substr $token, 1, -1;
            $inside =~ s/[^\n]/./g;
            $token = substr($token, 0, 1) . $inside . substr($token, -1);
        }
        $mask .= $token;
    }
    return ($code, $mask);
}

my $literal = qr/(?:"(?:[^"\\\n]|\\.)*"\s*)+/;
my %called;
for my $file (split /\n/, `find core app -name '*.cpp' -o -name '*.h' | LC_ALL=C sort`) {
    open my $in, '<', $file or die "no $file";
    my ($code, $mask) = stripped(do { local $/; <$in> });
    my $place = sub { "$file:" . (1 + (substr($mask, 0, $_[0]) =~ tr/\n//)) };
    while ($mask =~ /\b(?:tr|QCoreApplication::translate)\s*\(/g) {
        my $begin = $-[0];
        my $arguments = substr $code, $+[0];
        # What is said twice on one line is told once by lupdate.
        my ($sentence) = $arguments =~ /^\s*($literal(?:,\s*$literal)?)/;
        $called{$file}{$place->($begin) . ($sentence // "")} = 1;
        my $first = $& =~ /translate/ ? qr/\s*"[^"\n]+"\s*,\s*/ : qr/\s*/;
        breach('no-literal', $place->($begin)) unless $arguments =~ /^$first$literal[,)]/;
        breach('plural-by-hand', $place->($begin)) if $arguments =~ /^$first"1 /;
    }
    while ($mask =~ /^[ \t]*#[ \t]*define\b(?:[^\n]*\\\n)*[^\n]*\btr\s*\(|\bQT_TR\w*_NOOP\w*/gm) {
        breach('said-elsewhere', $place->($-[0]));
    }
    # Two sentences for one and for many: what every language does otherwise.
    while ($mask =~ /(?:[=!]=|>)\s*1\s*\?([^;]*)/g) {
        my ($begin, $asked) = ($-[0], substr $code, $-[1], $+[1] - $-[1]);
        breach('plural-by-hand', $place->($begin)) if $asked =~ /\btr\s*\(.*\btr\s*\(/s && $asked =~ /\btr\s*\(\s*"[^"\n]*%1/;
    }
}

my $lupdate = (grep { -x } '/usr/lib/qt6/bin/lupdate', split /\n/, `command -v lupdate6; command -v lupdate`)[0];
if (!$lupdate) {
    print "There is no lupdate here.\n";
    exit 77;
}
my $folder = `mktemp -d`;
chomp $folder;
END {
    my $code = $?; # which system() would replace
    system 'rm', '-rf', $folder if $folder;
    $? = $code;
}

my $said = `$lupdate -silent -no-ui-lines -locations absolute core app -ts $folder/all.ts 2>&1`;
breach('lupdate-says', $_ =~ s/^\Q$root\E\///r) for split /\n/, $said;

my (%extracted, $nowhere);
open my $all, '<', "$folder/all.ts" or die 'lupdate wrote nothing';
while (<$all>) {
    $nowhere = $1 eq '' if m{<name>(.*)</name>};
    $nowhere = 1 if m{<name/>};
    next unless m{<location filename="(.*?)" line="(\d+)"};
    my ($named, $line) = ($1, $2);
    my $file = realpath("$folder/$named") =~ s/^\Q$root\E\///r;
    $extracted{$file}++;
    breach('no-context', "$file:$line") if $nowhere;
}
close $all;
my %files = map { $_ => 1 } keys %called, keys %extracted;
my $sentences = 0;
for my $file (sort keys %files) {
    my ($calls, $found) = (scalar keys %{$called{$file} // {}}, $extracted{$file} // 0);
    breach('not-extracted', "$file asks for a translation $calls times, lupdate finds $found") if $calls != $found;
    $sentences += $found;
}

# The plurals of the sources are those of the translation, and all of them are told.
my $kept = 'resources/translations/asleft_en.ts';
if (-e $kept) {
    system 'cp', $kept, "$folder/asleft_en.ts";
    system "scripts/translations $folder/asleft_en.ts >/dev/null 2>&1";
    my $differ = `diff $kept $folder/asleft_en.ts`;
    breach('plural-untold', "$kept is not what scripts/translations makes of the sources:\n$differ") if $differ ne '';
    my $unfinished = `grep -nE 'type="|<numerusform></numerusform>' $kept`;
    breach('plural-untold', "$kept:$_") for split /\n/, $unfinished;
}

if ($breaches) {
    print "$breaches sentences, or more, cannot be translated\n";
    exit 1;
}
print "$sentences sentences can be translated\n";
