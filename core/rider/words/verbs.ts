import type { WordTable } from './table.ts';

/** Between a performer and what they wish: "Anna needs lots of herself". */
export const verbs: WordTable<'wishes' | 'plays' | 'listens' | 'has'> = {
  wishes: {
    trade:
      'needs, wants, would like, likes, need, want, requires, wishes, asks for, prefers, wants to hear, needs to hear, hears, would love, must have, should have, should get, gets, has to hear, will need, wants just, please give, only wants, only needs, loves, could use, could do with, wouldn t mind, is after, is happy with, is fine with, fancies, is asking for, asks only for, must hear, must get, has to get, should hear, shall have, please send, gets only, would prefer, would appreciate, does want, also wants, also needs, will want, d like, really needs, really wants, absolutely needs, mainly needs, mainly wants, takes, is easy, is easygoing, is not fussy, isn t fussy, has simple needs, goes for, is happy with just',
    de: 'braucht, möchte, will, wünscht, hätte gern, hätte gerne, benötigt, brauchen, möchten, wünscht sich, hört, bekommt, will hören, hört gern, hört gerne, kriegt, wollen, hätte gerne auch, sollte hören, soll hören, muss hören, möchte hören, möchte gern, möchte gerne, braucht nur, will nur, möchte nur, würde gern, würde gerne, wünschen sich, wünschen, bittet um, verlangt, kommt aus mit, braucht vor allem, möchte vor allem, will vor allem, hören gern, bekommen, kriegen, bräuchte, bräuchten, benötigen, hätten gern, hätten gerne, darf haben, möcht, wui, brauchen auch, legt wert auf, freut sich über, steht auf, nimmt, nehmen, ist pflegeleicht, ist genügsam, ist bescheiden, ist zufrieden mit, ist unkompliziert, gibt sich zufrieden mit, reicht, genügt',
    fr: 'veut, voudrait, a besoin de, a besoin d, a besoin du, a besoin des, aime entendre, aiment entendre, aurait besoin de, aurait besoin d, souhaite, aimerait, demande, entend, besoin de, veut entendre, désire, souhaiterait, voudraient, veulent, ont besoin de, ont besoin d, souhaitent, aimeraient, demandent, entendent, doit entendre, a juste besoin de, n a besoin que de, voudrait entendre, souhaite entendre, aimerait entendre, préfère, préfèrent, apprécie, réclame, aime bien, il lui faut, désirent, doit avoir, veut bien, prend, prennent, est facile, n est pas difficile, se contente de, se contentent de, est ravi avec, est content avec',
    es: 'quiere, necesita, pide, desea, le gusta, quiere oír, quiere escuchar, prefiere, necesita oír, quieren, necesitan, piden, desean, les gusta, quisiera, quisieran, quería, querían, le gustaría, querría, prefieren, requieren, quiere sólo, quiere solo, necesita sólo, necesita solo, debe oír, debe escuchar, necesita escuchar, desea escuchar, le viene bien, le va bien con, le gusta escuchar, le encanta, le hace falta, pediría, pretende, coge, toma, se conforma con, se conforman con, no es exigente, con esto le basta, es fácil, está contento con, está contenta con',
    it: 'vuole, vorrebbe, ha bisogno di, ha bisogno del, ha bisogno della, ha bisogno dei, ha bisogno delle, piace sentire, gli piace sentire, le piace sentire, servono, avrebbe bisogno di, chiede, desidera, gradisce, vuole sentire, preferisce, necessita di, vogliono, vorrebbero, hanno bisogno di, chiedono, desiderano, gradirebbe, vuole solo, chiede solo, deve sentire, desidera sentire, gli serve, le serve, gli servono, le servono, preferirebbe, preferiscono, necessitano di, richiedono, gradiscono, vorrebbe sentire, ha bisogno solo di, gli basta, le basta, si accontenta di, desidererebbe, ci tiene a, prende, prendono, dice che gli va bene, dice che le va bene, gli va bene, le va bene, è di poche pretese, è contento con, è contenta con, si fa bastare, gli bastano, le bastano',
    nl: 'wil, heeft nodig, wenst, heeft graag, hoort graag, wil graag, vraagt, wil horen, wil graag horen, willen, hebben nodig, wensen, hebben graag, horen graag, willen graag, vragen, willen horen, zou graag, wil alleen, wil vooral, moet horen, krijgt, krijgen, heeft alleen nodig, vraagt om, verlangt, prefereert, wil graag wat, zou graag willen, heeft behoefte aan, wil ook, wil ook graag, hoort graag veel, moeten horen, heeft liefst, wil het liefst, wil liever, verkiest, neemt, is makkelijk, is niet moeilijk, is tevreden met, is blij met, heeft genoeg aan',
    pt: 'quer, precisa de, deseja, pede, gostaria de, gosta de, quer ouvir, gostaria, querem, precisam de, precisam, desejam, pedem, gostariam de, gostam de, querem ouvir, quer só, só quer, só precisa de, necessita de, necessita, necessitam de, prefere, preferem, deve ouvir, precisa ouvir, precisa de ouvir, deseja ouvir, gosta de ouvir, gosta da, gosta do, gosta das, gosta dos, precisa da, precisa do, precisa das, precisa dos, queria, queriam, precisava de, pretende, pede só, faz questão de, precisa, leva só, fica bem com, fica contente com, contenta se com, não é exigente, é simples, fica satisfeito com, basta lhe',
  },
  plays: {
    trade:
      'plays, sings, on, is on, plays the, sings lead, does, is playing, playing, singing, plays on, and sings, sings and plays, is our, doubles on, stands, is standing, sits',
    de: 'spielt, singt, ist, sitzt am, sitzt an, steht am, am, an der, an den, macht, singt und spielt, übernimmt, zupft, trommelt, spielen, singen, steht, sitzt, stehen',
    fr: 'joue, chante, à la, au, joue de la, joue du, est à la, est au, chante et joue, joue aussi, s occupe de, jouent, chantent, se tient, est placé, est placée, est assis, est assise',
    es: 'toca, canta, en la, al, toca y canta, canta y toca, tocan, cantan, se encarga de, está, se coloca, se sienta',
    it: 'suona, canta, sta al, sta alla, al, alla, suona e canta, canta e suona, suonano, cantano, si occupa di, sta, si siede, è seduto, è seduta',
    nl: 'speelt, zingt, op, zingt en speelt, spelen, zingen, bespeelt, staat, zit',
    pt: 'toca, canta, na, no, toca e canta, canta e toca, tocam, cantam, fica no, está, senta se',
  },
  listens: {
    trade:
      'listens, uses, use, is on, are on, uses own, listens on, monitors on, we use, i use, using, on own, works with, with own, have own, brings own, plays with, wears, is using, are using, is listening on, listen on, listens to, listening on, listens through, hears through, hears it through, monitors through, monitoring through, wears own, have their own, brings their own, brings his own, brings her own, work with, is running',
    de: 'nutzt, benutzt, hört über, spielt mit, verwendet, benutzen, nutzen, verwenden, hören über, hört auf, hören auf, hört mit, hören mit, arbeitet mit, arbeiten mit, hat eigenes, hat eigene, hat eigenen, bringt eigenes, bringt eigene, spielt über, läuft über, spielen mit, bringt mit, hat einen, hat ein, hat eine, haben eigene, haben eigenen',
    fr: 'utilise, utilisent, sur, est en, sont en, écoute sur, écoute avec, écoutent avec, écoute en, joue avec, joue en, jouent en, joue sur, travaille en, ont leur propre, a son propre, écoutent sur, apporte son, apporte ses, dispose de, a un, a une, ont un',
    es: 'usa, usan, utiliza, escucha por, usamos, lleva, escuchan por, usa su propio, usan sus propios, trabaja con, trabajan con, utilizan, monitorea con, monitorea por, monitorean con, escucha con, escuchan con, va por, van por, trae su, trae sus, tiene un, tiene una, tienen',
    it: 'usa, usano, utilizza, ascolta in, usiamo, ascoltano in, ascolta con, ascoltano con, lavora con, lavorano con, utilizzano, ha il suo, ha la sua, hanno il loro, porta il suo, porta la sua, suona con, sente con, sente in, monitora con, ha un, ha una, hanno',
    nl: 'gebruikt, gebruiken, luistert via, speelt met, luisteren via, luistert met, luisteren met, werkt met, werken met, heeft eigen, hebben eigen, brengt eigen, brengt zijn eigen, brengt haar eigen, speelt op, spelen met, neemt mee, heeft een, hebben een',
    pt: 'usa, usam, utiliza, escuta em, usamos, utilizam, escuta por, escutam por, trabalha com, trabalham com, ouve em, ouve por, ouvem por, monitora com, traz o seu, traz a sua, traz seu, toca com, usa o seu, usam os seus, tem um, tem uma',
  },
  /** What is had may be a device, or a thing that is none of the desk's business. */
  has: {
    trade: 'has, have, has got, will have',
    de: 'hat, haben',
    fr: 'a, ont, aura, auront, il a, elle a, porte, portent',
    es: 'tiene',
    it: 'ha, avrà, porta, tiene',
    nl: 'heeft, hebben, draagt',
    pt: 'tem, têm, leva, levam, traz',
  },
};
