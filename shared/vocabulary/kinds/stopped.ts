import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const stopped = {
  name: 'stopped',
  group: 'limit',
  title: 'Camera stopped',
  plural: 'camera stops',
  takes: [],
  yieldsTo: 'end-of-line',
  ends: 'stopped',
  words: spoken`
    standstill; held up at; held up here; camera stuck; us stopped; me stopped; stopped me|us|it|the_camera|her cold|dead|short;
    i|we stop at; stopped right here|there; stopped dead; stopped cold; could go no|not further|farther;
    stopped here; stopped there; i am stopped; i 'm stopped; we 're stopped; full stop; dead stop; hard stop;
    camera stopped; stopped at; stop point; hung up; wedged; jammed in; stopping point; refusal; camera refusal;
    pushed to refusal;
  `,
  signs: spoken`
    trap|bend|elbow|root|roots|offset|step|tee|debris|turn|fitting|it|she|this won't|will_not|wouldn't|isn't_going_to let me|us|it|her|the_camera by|past|through|around|go; quit there|here|right_there; that|this|it|# 's|is all i|we get|got|can_get|could_get;
    ^ and|so|but? stopped|stopping|halted here|there|now|cold? $; ^ and|so? i|we|camera 'm|'s|'re|is|am stopped|stopping|stuck|halted here|there|now? $; that 's me|us stopped|stuck|stopping;
    ^ and|so? stopped|stopping ,;
    camera|head|she|it|i|we won't|wouldn't|will_not|cannot|can't|doesn't|couldn't go|get|come|turn|fit|make|pass|negotiate|manage|take round|around|it|that|this|any|through|past|by|over? $;
    ^ won't|wouldn't|will_not|can't|cannot|couldn't|doesn't go|get|come|turn|fit|make|pass|negotiate|manage round|around|it|that|this|any|through|past|by|over $;
    no|not getting|going|passing|making|taking round|around|past|through|by|beyond that|this|it|them|her;
    hitting|hit|up_against|against|there_'s|met|meeting something hard|solid|stiff; won't|not_going_to|not_gonna|don't_want_to|i_'d_rather_not force it|her|past|through|by; stopped , and|so|not|main|didn't|never|haven't|i; stopped and i|we 've|haven't|didn't|never;
    isn't|is_not|ain't|not|won't|'s_not|'m_not going|go|getting|get|moving|move|budging|budge one|another|a single? more? inch|foot|step|hair;
    ^ nope|no|nah? not|isn't|ain't going|getting|moving|budging|passing|happening through|past|by|around|on|further|farther|anywhere|any_further|any_farther|for_me? $;
    ^ won't|wouldn't|will_not|can't|cannot|not_gonna go|move|budge|pass|fit|turn|advance|take_it $; # , won't|wouldn't|can't|cannot|not go|going|move|moving|budge|budging|pass|fit|turn|advance $;
    furthest|farthest|most|deepest i|we|it|she|this|the_camera|that|he|you can|could|will|'ll|'d|am_able_to|was_able_to? get|got|go|goes|went|gets|reach|reached|made_it|make_it|push|pushed; # and? i_'m|we_'re|that_'s? done $;
    any|no further|farther than #; no further|farther than #; not|isn't|ain't|won't|wouldn't|can't|cannot|couldn't * further|farther|past|beyond #; i|we 've? push|pushed|pushing as_hard|all_i|until|till; # is|'s my|our|the limit; hit|reached|at|is|'s|that_'s my|our limit;
    can't|cannot|won't|not_going_to|not_gonna force|muscle|bully it|her|him|the_camera|this|that; that 's|is a|it_,_a no go; no go at|here|there|past|beyond; end|ends|ended|finish|finished|wind|wound|winds up? stuck|jammed|wedged;
    goes|go|get|gets|got|gone to # and no|then_no|stops|stopped|that_'s_it|quits|jams|sticks; that 's|is it for|with the? camera|me|us|head|push;
    where|here|there it|she|he|this|the_camera|camera|me|i|we|head gives_up|gave_up|quits|quit|jams|jammed|hangs_up|hung_up|stops_dead|stalls|stalled|parks|runs_out;
    camera|head|she|it|i|we 's|am|'m|are|'re|is? stalled|stalls|beat|beaten|defeated|done_for|licked;
    i|we|so|it|camera pull|pulled|pulls|draw|drew up|short at #; i|we|so pull|pulled up short|there|here|at; not|isn't|won't|wouldn't|refuse_to|don't_want_to|i_'d_rather_not|daren't stick|sticking|put|putting|run|running|take|taking|send|sending|risk|risking|push|pushing|shove|shoving the|my? camera|head|it under|through|into|past|beyond|in that|it|there|this|them;
    # , stuck|jammed|wedged|blocked_up|stopped $; ^ stuck|jammed|wedged $;
    camera|head|she|it|i|we|he|thing|this 's|is|'m|are|'re|just? not|isn't|ain't|won't|wouldn't|can't|cannot|couldn't move|moving|budge|budging|advance|advancing|gain|gaining $;
    not|ain't|isn't|no|can't|couldn't|won't|wouldn't make|making|get|getting|come|coming|fit|fitting|squeeze|squeezing it|her|me|this_thing|the_camera through|past|by|around|round|over|further|farther|anywhere $;
    quit|quits|stopped|stops moving|going|advancing|feeding on me|us?; lost|lose|losing my|the|all? push; can't|cannot|couldn't|won't get|pull|bring|steer it|her|the_head|the_camera out the other|far side; keeps diving|dropping|digging|nosing in|into|down;
    that 's|about|just all i|we can get|do|reach|see|push; # and? that 's|is all|it $; blocked|prevented|kept|barred|stopped from going|getting|continuing|pushing;
    as far as i|we|it|she can|could|will|'ll|'d take|feed|send|drive|work|force it|her|the_camera|this?; as far as i|we|it|she can|could|will|'ll|'d run it|her|the_camera;
    that 's|is|was the? end of the? road|trail|push; going|gonna|have|had|got to have_to? stop|quit|halt at|here|there #; don't|do_not want to lose|hurt|break|damage|bend|kink|bury the|my|her|it|a camera|head|cable; i|we|camera|she|it 'm|'re|is|am|are|'s blocked|shut_out $;
    camera|head|she|it|that|this 's|is|just? not|isn't|ain't going $; stopped|halted|blocked|held by that|this|it|those; stops|stopped me|us at|here|there|cold|dead; that 's|is all the farther|further i|we|it|she can|could|'ll|will;
    turn|bend|corner|sweep|ninety|90|elbow|wye|tee|offset|lip|ledge * i|we|it|she|the_camera|camera|head can't|cannot|couldn't|won't|wouldn't|could_not make|take|get_around|get_round|get_over|get_up|climb|clear|do|negotiate|turn;
    can't|cannot|couldn't|won't|wouldn't|could_not|unable_to|not_able_to|not_gonna make|take|clear|negotiate|do|turn the|that|this|a|into turn|bend|corner|ninety|90|sweep|elbow|swing|it|tee|wye|that;
    end of my|our|her|the_camera's road|ride|trip|trail|journey|push; end of the road|trail for me|us|her|the_camera|this_camera;
    is|was all i|we|she|it get|could_get|can_get|'ll_get|will_give|could_do;
    terminating|abandoning|aborting|terminated|abandoned|aborted the? survey|inspection|run|push|here|there|at|due|because; hits|hit it|that|this|something|there and bounces|stops|quits|stopped;
    no way the|this|my|that camera|head|thing is|'s going|getting|passing|making; that 's where it|she|the_camera|i jams|hangs|sticks|quits|gives_up|gave_up;
    stuck at; run|ran|running|am|'m|'re|are|all? out of cable|rod|rods|hose|push_rod|reel|line|footage at|here|there; ^ out of cable|rod|rods|hose|push_rod|reel; cable|rod|reel|hose 's|is all? out|gone|done $; cable|rod|reel|hose 's|is all? out|gone|done at|here|there;
    would_not|wouldn't|doesn't_want_to|does_not_want_to|refuses_to|refused_to|ain't_gonna|not_gonna|not_going_to|don't_want_to get|go|pass|push|make|move|advance|fit|squeeze past|by|through|around|further|farther|any_further|any_farther|on|over|it_past|it_by|it_through|beyond|any_more;
    can't|cannot|couldn't|could_not|unable_to|not_able_to|won't|wouldn't|would_not|will_not|did_not|didn't continue|advance|proceed|progress;
    can't|cannot|couldn't|could_not|unable_to|not_able_to go|pass|push|get|travel more|no_more|no_further|no_farther|past_here|past_there|past_this|past_that;
    i|we|she|it|camera|head ain't|isn't|is_not|'m_not|'re_not|'s_not|not going|getting|passing|making|pushing|moving past|by|through|around|further|farther|any_further|any_farther|it_past|it_through|anywhere|over;
    i|we ain't|'m_not going on; camera|head|she|it|i 's_not|isn't|is_not|not|'m_not passing it|this|that; camera|head|she isn't|'s_not making it|this|that; i|we ain't|'m_not going on past|from|beyond|after|any;
    camera|head|she|it won't|wouldn't|would_not|will_not|refuses_to|refused_to|doesn't_want_to|can't|cannot advance|pass|move|budge|proceed|go_on|continue;
    camera|head|skid|rod|cable 's|is|are|gets|got|has|goes? jammed|jams|jam|wedged|wedges|stuck|sticks|hung_up|hangs_up|bunching_up|buckling|blocked|held_up|pinned|bound_up;
    i|we|she|it 'm|am|'re|are|'s|is jammed|wedged|held_up|pinned;
    survey|inspection|run|push|video|pass|traverse abandoned|terminated|aborted|halted|stopped|is_abandoned|was_abandoned|cut_short;
    nowhere|no_place to go; can go no|not further|farther; go no further|farther; no going on|past|further|farther;
    that 's|is all she|it|the_camera|i|we 'll|will|can do|go|push|get; that 's|is where i|we turn|turned|'m_turning|have_to_turn|had_to_turn around|round|back; that_'s_where it|she|the_camera stops|stopped|quit|quits;
    i|we have|'ve|had to stop here|there|at; nothing|nothing_'s getting past|through|by this|that|it|here;
    camera stays at|there|here; this is|'s where i|we have_to|'ve_got_to|'ve_to stop; that stops|stopped the camera|me|us;
    can't|cannot|couldn't|can_not|won't|could_not|unable_to|not_able_to get|go|pass|push|make|move|advance|force|work|climb|fit|squeeze|proceed past|by|through|around|further|farther|any_further|any_farther|on|any_more|it_past|it_by|it_through|beyond|over|it_around|her_past|her_through|her_by|the_bend|the_turn|forward;
    can't|cannot|couldn't|can_not|won't|could_not|unable_to|not_able_to get|go|pass|push|make|move|advance|force|work|climb|fit|squeeze|proceed * past|by|through|around|further|farther|on|beyond|over;
    can't|cannot|couldn't|unable_to|won't|will_not pass|advance|proceed|climb;
    can't|cannot|couldn't|won't budge;
    won't|doesn't|does_not|will_not|wouldn't go|pass|fit|make|push|get|climb any|past|further|farther|through|by|around|it|no|over;
    camera * won't|wouldn't|cannot|can't|couldn't|will_not pass|make|go|get|fit|climb|push;
    camera stops|stop|stopped; where i|we|it stop|stops|stopped|quit|have_to_stop; i|we have|had to stop;
    i|we stop|stopped|quit here|there; i stop there; i'm|i_'m|we're quitting|done|stuck|stopping; i'm stuck;
    we're stuck; i 'm stuck; we 're stuck; camera 's stuck; camera is stuck; got stuck; gets stuck; it 's stuck;
    i 'm|we_'re quitting|stopping; head * bounces off; bounces off; no further; no farther; no going further;
    can't go any; end of the road for; hit a wall; dead in its tracks; that 's my stop; that is my stop;
    stops me; stops us; stopped me; stopped us; stops the camera; stopped the camera; won't make it;
    wall it off; now it stop; not getting * past|by|through|around; not getting the camera; not getting through;
    not getting past; not going any further|farther; can't get by; 
    no way past; no way through; no way around; no getting past; no getting through; no getting by;
    no getting around; refuses to go; refuses to pass; camera quits; only as far; will not pass; could not pass;
    cannot pass; end of the push at;
    ^ and|but|just|still|it|she|head|camera? won't|wouldn't|doesn't|refuses_to go|move|budge|advance|pass|make_it|push|want_to $; i|we pull|pulled|draw|drew up|short at|here|there|short; where i|we 'm|'re|am|are? stop|stopped|stopping|quit|quitting|pull_up|have_to_stop|had_to_stop|turn_back|turned_back; camera|head just? skates|skids|slides|spins|bounces|balks|stalls; furthest|farthest i|we|she|it|the_camera get|got|can_get|could_get|goes|went|can_go; calling it here|there|at|quits; not|isn't getting|going by|past|through|around the|that|this|it|any; getting|get|goes|going nowhere;
  `,
  notWords: spoken`
    won't|wouldn't|doesn't pass|survive|fail an|its|the? inspection|test; won't|wouldn't|doesn't go away|bad|far|well|by_itself|unnoticed;
    can't|couldn't|cannot get the|a|my|any light|picture|lens|tool|hand|focus|angle on|around|to|through|in;
    stuck at the|home|work|his|her; going on about|a|the|vacation|holiday; i 'm not going on a;
    i|we|he|she|they 'm|am|'s|is|'re|are not making it|this|that|any up; ain't making it|this|that up; full stop , full;
    nearly|almost|just_about|never stopped|stops|stop me|us|it|the_camera; nearly|almost|nearly_got|almost_got hung_up|stuck|wedged|jammed;
    got hung_up|stuck for|there|a; hung up for|there; stuck for a;
    can't|couldn't|could_not get past|through|by|over|around it|this|that? at_first|first;
    at first i? can't|couldn't get past|through|by;
    if|when|where|unless|until i|you|we|they|it|the_camera can't|cannot|couldn't|won't|don't|doesn't get|go|pass|push|fit|make * past|by|through|around|on|further|over;
    stays at the home|house; can't push on it|that; isn't going anywhere; not going anywhere; it can't go on like; it can't continue;
    won't move the; it won't move much; it won't go on the; it won't pass a|the inspection;
    say|says|said|tell|tells|told|know|see|saw|show|shows|forget|remember|remembers|note|write|mark * where it|she|this stops|stopped|quits|quit; where it|she|this quits|quit|stops|stopped * ing|climbing|raining|being|getting|going; can't|won't force you|him|them|anyone|people;
    push|pushed|pushing as_hard|all_i and|but|then through|past; by the furthest; furthest|farthest you|i can see|imagine;
    stop there; stop right there; stopped to look; stopped to; stopped by; stopped in; stopped at the store;
    stopped at the; stop me; stop at the|a|his|her|night; can't get over; can't get enough; can't go wrong; can't push that;
    can't push up; can't make out; won't get into; can't get a; couldn't get a; can't get my; stopped for;
    iron stops; pipe stops; clay stops; liner stops; belly stops; i have to stop for; water stopped;
    stopped raining; stopped running; stopped up; rain stopped; has stopped; stopped working; stuck on;
    stuck in; stuck up; hung up on; hung up the; hung up my; my kid stuck; can't get it open;
    couldn't get it open; can't get it off; won't come off; won't open; can't get past how; can't make it to;
    nothing can get; can get by; can squeeze by; i can get; i can push; push by; can push through; get by;
    can't get in; couldn't get in; can't get into; can't fit a; can't fit my; 
    just barely squeeze; no further findings; no further comment; stuck behind; got stuck behind; stop it;
    can't get out; couldn't get out; full stop period; wedged in the door; can't get to; couldn't get to;
    that|which|it|just goes|going|go nowhere; don't|doesn't|didn't go nowhere|anywhere; getting|going nowhere with|on the|my|this permit|phone|call|owner; car|truck|van|machine|engine|reel won't go|move|budge|start; where we|i stop for|eating; it won't go off|away|in_the|up_in_price|back; lid|cap|plug|cover|cleanout|bolt|nut won't|wouldn't|doesn't go|move|budge;
    it 's|is jammed|wedged full|solid|tight|up|with;
  `,
  examples: {
    says: [
      { text: 'Trap at 42. It will not let me by. Quit there.', gives: [{ kind: 'trap', at: 42 }, { at: 42 }] },
      { text: 'No farther than thirty six.', gives: { at: 36 } },
      { text: 'The furthest I could get was fifty four feet.', gives: { at: 54 } },
      { text: "Forty three, won't go.", gives: { at: 43 } },
      { text: "I'm stopped at twenty nine by a wad of something.", gives: { at: 29 } },
      { text: 'Thirty two, stuck.', gives: { at: 32 } },
      { text: "I've twisted it and pushed it. Won't go. Twenty nine.", gives: { at: 29 } },
      { text: "My camera isn't going one more inch, fifteen feet.", gives: { at: 15 } },
      { text: "I can't make the turn at thirty one.", gives: { at: 31 } },
      { text: 'The head would not advance at 37 feet.', gives: { at: 37 } },
      { text: "We're held up at 29.", gives: { at: 29 } },
      { text: 'Survey abandoned at 52 feet.', gives: { at: 52 } },
      { text: "Forty four, and that's all she'll do.", gives: { at: 44 } },
      { text: "Can't get past it, fifty eight feet.", gives: { at: 58 } },
      { text: 'Camera stopped at 41.', gives: { at: 41 } },
      {
        text: "And I can't get past the bend at twenty three feet, so I'm quitting.",
        gives: [{ at: 23 }, { kind: 'bend', at: 23 }],
      },
      { text: "Won't go round. Stopped. Thirty one.", gives: { at: 31 } },
      { text: "Forty seven feet and I can't push it any further.", gives: { at: 47 } },
      { text: "Camera won't go any farther than twenty six feet.", gives: { at: 26 } },
      { text: "Thirty three and that's a hard stop.", gives: { at: 33 } },
      { text: "I'm hung up at sixty two and a half.", gives: { at: 62.5 } },
    ],
    never: [
      'You note where it stops and where it starts.',
      "It won't pass inspection like this.",
      "Twenty two feet, all clear. That's all I've got.",
      'It nearly stopped me but I am through.',
      'I stopped for coffee on the way.',
      'Stop there a second.',
      'The rain stopped.',
      "Ten feet. I promise I'm not making that up.",
    ],
    notYet: [{ text: "I can't get past their dog.", gives: [] }],
  },
  report: {
    meaning: 'The camera could not go farther, so what lies beyond was not seen.',
    next: 'Have the rest looked at from another opening, or after the hindrance is removed.',
    glossary: 'Camera stopped: the place where the camera could not be pushed farther.',
  },
} as const satisfies Kind;
