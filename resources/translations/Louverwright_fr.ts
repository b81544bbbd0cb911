<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en_GB">
<context>
    <name>Louverwright</name>
    <message>
        <source> (back)</source>
        <translation> (arrière)</translation>
    </message>
    <message>
        <source> (front)</source>
        <translation> (avant)</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source>, or 0 ({auto})</source>
        <translation>, ou 0 ({auto})</translation>
    </message>
    <message>
        <source>, or give the {label} as measured first</source>
        <translation>, ou donnez d'abord {label} telle que mesurée</translation>
    </message>
    <message>
        <source>, which puts the pitch off by {error}</source>
        <translation>, ce qui fausse la pente de {error}</translation>
    </message>
    <message>
        <source>0.3 of the width; 150 mm and what soles and rail need at least</source>
        <translation>0,3 de la largeur ; au moins 150 mm et ce que demandent semelles et traverse</translation>
    </message>
    <message>
        <source>0.6 of the width</source>
        <translation>0,6 de la largeur</translation>
    </message>
    <message>
        <source>1 mm past the dados' ends, 10 mm at least</source>
        <translation>1 mm au-delà du bout des rainures, 10 mm au moins</translation>
    </message>
    <message>
        <source>1.2 m², 12 sq ft or 144 sq in</source>
        <translation>1.2 m², 12 sq ft ou 144 sq in</translation>
    </message>
    <message>
        <source>12.5 kg or 27 lb</source>
        <translation>12.5 kg ou 27 lb</translation>
    </message>
    <message>
        <source>13.6, by the lifting equation for a stage held before one</source>
        <translation>13,6, selon l'équation de levage pour un étage tenu devant soi</translation>
    </message>
    <message>
        <source>33.7° or 8:12</source>
        <translation>33.7° ou 8:12</translation>
    </message>
    <message>
        <source>A density of “{density}” is not between {lightest:g} and {heaviest:g} kg/m³. Give it as a number.</source>
        <translation>Une masse volumique de « {density} » n'est pas entre {lightest:g} et {heaviest:g} kg/m³. Donnez-la sous forme de nombre.</translation>
    </message>
    <message>
        <source>A middle stile; automatic: where the clear width passes the slats' span.</source>
        <translation>Un meneau ; automatique : là où la largeur libre dépasse la portée des lames.</translation>
    </message>
    <message>
        <source>A moisture of “{moisture}” is not between 0 and {wettest:g} % of the dry weight. Give it as a number.</source>
        <translation>Une humidité de « {moisture} » n'est pas entre 0 et {wettest:g} % de la masse anhydre. Donnez-la sous forme de nombre.</translation>
    </message>
    <message>
        <source>A note for the shop, printed on the part's sheet and in the cut list.</source>
        <translation>Une note pour l'atelier, imprimée sur la feuille de la pièce et dans la liste de débit.</translation>
    </message>
    <message>
        <source>A part came out wrong</source>
        <translation>Une pièce est ratée</translation>
    </message>
    <message>
        <source>A reading on each slope</source>
        <translation>Une mesure sur chaque versant</translation>
    </message>
    <message>
        <source>A ridge of {ridge} usually takes {vents} vents.</source>
        <translation>Un faîtage de {ridge} reçoit d'ordinaire {vents} lanterneaux.</translation>
    </message>
    <message>
        <source>A scenario is an object with parameters.</source>
        <translation>Un scénario est un objet avec des paramètres.</translation>
    </message>
    <message>
        <source>A size is given for a piece that is lost: {told}. Give the size, or say that it is lost.</source>
        <translation>Une dimension est donnée pour une pièce perdue : {told}. Donnez la dimension, ou dites qu'elle est perdue.</translation>
    </message>
    <message>
        <source>A stock list is an object with a list of items. See the shipped lists.</source>
        <translation>Une liste des bois est un objet avec une liste d'articles. Voyez les listes fournies.</translation>
    </message>
    <message>
        <source>A thickness of {thickness:g} mm is more than the width of {width:g} mm. Exchange them.</source>
        <translation>Une épaisseur de {thickness:g} mm dépasse la largeur de {width:g} mm. Échangez-les.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Air target</source>
        <translation>Section d'aération voulue</translation>
    </message>
    <message>
        <source>All pieces apart</source>
        <translation>Toutes les pièces écartées</translation>
    </message>
    <message>
        <source>Along the ridge</source>
        <translation>Le long du faîtage</translation>
    </message>
    <message>
        <source>An item is an object with {item_keys}.</source>
        <translation>Un article est un objet avec {item_keys}.</translation>
    </message>
    <message>
        <source>An item needs a {key}.</source>
        <translation>Un article demande {key}.</translation>
    </message>
    <message>
        <source>Angle at the ridge</source>
        <translation>Angle au faîtage</translation>
    </message>
    <message>
        <source>Angles ({angles}) and rise over run ({lengths}) are both given, and they may disagree. Give one kind.</source>
        <translation>Des angles ({angles}) et un rapport hauteur sur longueur ({lengths}) sont donnés ensemble et peuvent se contredire. Donnez une seule sorte.</translation>
    </message>
    <message>
        <source>Area of the opening in plan, without what is left standing; of one vent, and of several the least.</source>
        <translation>Surface de l'ouverture en plan, sans ce qui y reste debout ; celle d'un lanterneau, et de plusieurs la plus petite.</translation>
    </message>
    <message>
        <source>Area of the opening in the roof, level; ridge board and rafters that stay take from it.</source>
        <translation>Surface de l'ouverture du toit, de niveau ; la panne faîtière et les chevrons qui restent en sont à déduire.</translation>
    </message>
    <message>
        <source>Area of the vent's roof to be covered.</source>
        <translation>Surface du toit du lanterneau à couvrir.</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Mesures réelles</translation>
    </message>
    <message>
        <source>Barge board</source>
        <translation>Planche de rive</translation>
    </message>
    <message>
        <source>Barn roof</source>
        <translation>Toit de la grange</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Base height</source>
        <translation>Hauteur de la base</translation>
    </message>
    <message>
        <source>Base weight</source>
        <translation>Poids de la base</translation>
    </message>
    <message>
        <source>Batten moisture</source>
        <translation>Bois des liteaux : humidité</translation>
    </message>
    <message>
        <source>Batten stock</source>
        <translation>Bois des liteaux</translation>
    </message>
    <message>
        <source>Batten thickness</source>
        <translation>Bois des liteaux : épaisseur</translation>
    </message>
    <message>
        <source>Batten width</source>
        <translation>Bois des liteaux : largeur</translation>
    </message>
    <message>
        <source>Battens that hold the screen.</source>
        <translation>Liteaux qui tiennent le grillage.</translation>
    </message>
    <message>
        <source>Bed mould and soffit nailer</source>
        <translation>Moulure et fourrure de la sous-face</translation>
    </message>
    <message>
        <source>Board gap</source>
        <translation>Jeu entre planches</translation>
    </message>
    <message>
        <source>Bottom rail</source>
        <translation>Traverse basse</translation>
    </message>
    <message>
        <source>Bottom rail height</source>
        <translation>Hauteur de la traverse basse</translation>
    </message>
    <message>
        <source>Bring all into view</source>
        <translation>Tout montrer dans la vue</translation>
    </message>
    <message>
        <source>Bring what is chosen into view</source>
        <translation>Montrer le choix dans la vue</translation>
    </message>
    <message>
        <source>Building width</source>
        <translation>Largeur du bâtiment</translation>
    </message>
    <message>
        <source>By the trade's rule a ridge of {ridge}, shared by {vents}, takes a vent {width} wide.</source>
        <translation>Selon la règle du métier, un faîtage de {ridge} partagé par {vents} reçoit un lanterneau large de {width}.</translation>
    </message>
    <message>
        <source>Cap plate</source>
        <translation>Sablière haute</translation>
    </message>
    <message>
        <source>Cap plates, laid flat.</source>
        <translation>Sablières hautes, posées à plat.</translation>
    </message>
    <message>
        <source>Change the dimensions of the selected vent in a panel, with a picture of what they make.</source>
        <translation>Modifier dans un panneau les dimensions du lanterneau choisi, avec une image du résultat.</translation>
    </message>
    <message>
        <source>Change the expression.</source>
        <translation>Changez l'expression.</translation>
    </message>
    <message>
        <source>Choose a hip roof, or 4 sides.</source>
        <translation>Choisissez un toit à croupes, ou 4 côtés.</translation>
    </message>
    <message>
        <source>Choose a thicker post, or an even number of rafters a side.</source>
        <translation>Choisissez un poinçon plus épais, ou un nombre pair de chevrons par côté.</translation>
    </message>
    <message>
        <source>Choose a thicker post.</source>
        <translation>Choisissez un poinçon plus épais.</translation>
    </message>
    <message>
        <source>Choose a thinner mast, or a thicker post.</source>
        <translation>Choisissez un mât plus mince, ou un poinçon plus épais.</translation>
    </message>
    <message>
        <source>Choose a thinner mast, or larger frame stock.</source>
        <translation>Choisissez un mât plus mince, ou un bois de cadre plus fort.</translation>
    </message>
    <message>
        <source>Choose narrower battens, or leave the screen out.</source>
        <translation>Choisissez des liteaux plus étroits, ou supprimez le grillage.</translation>
    </message>
    <message>
        <source>Choose one of these.</source>
        <translation>Choisissez l'un de ceux-ci.</translation>
    </message>
    <message>
        <source>Choose one of: {names}.</source>
        <translation>Choisissez parmi : {names}.</translation>
    </message>
    <message>
        <source>Choose one of: {parts}.</source>
        <translation>Choisissez parmi : {parts}.</translation>
    </message>
    <message>
        <source>Choose other stock or a smaller vent.</source>
        <translation>Choisissez un autre bois ou un lanterneau plus petit.</translation>
    </message>
    <message>
        <source>Choose stock of that form and size, or change the vent's {parameter} instead, for the layout is made from it.</source>
        <translation>Choisissez un bois de cette forme et de cette dimension, ou changez plutôt « {parameter} » du lanterneau, car c'est d'après lui qu'il est disposé.</translation>
    </message>
    <message>
        <source>Choose the other cladding, or other stock.</source>
        <translation>Choisissez l'autre bardage, ou un autre bois.</translation>
    </message>
    <message>
        <source>Choose the report as it was written.</source>
        <translation>Choisissez le rapport tel qu'il a été écrit.</translation>
    </message>
    <message>
        <source>Choose which sets of papers to write to a folder, such as the cut report, the lift plan or the checks.</source>
        <translation>Choisir les jeux de documents à écrire dans un dossier, comme le rapport de coupe, le plan de levage ou les contrôles.</translation>
    </message>
    <message>
        <source>Choose wider corner board stock, or a narrower face.</source>
        <translation>Choisissez un bois plus large pour les planches d'angle, ou une face plus étroite.</translation>
    </message>
    <message>
        <source>Choose wider fascia stock, or a narrower overhang.</source>
        <translation>Choisissez un bois plus large pour les bandeaux, ou un débord plus étroit.</translation>
    </message>
    <message>
        <source>Choose wider frame stock, or a narrower post face.</source>
        <translation>Choisissez un bois de cadre plus large, ou une face de poteau plus étroite.</translation>
    </message>
    <message>
        <source>Choose wider frame stock.</source>
        <translation>Choisissez un bois de cadre plus large.</translation>
    </message>
    <message>
        <source>Choose wider plate stock, or thinner trim.</source>
        <translation>Choisissez un bois plus large pour la sablière, ou un habillage plus mince.</translation>
    </message>
    <message>
        <source>Choose wider stock, or make the flare shorter or steeper.</source>
        <translation>Choisissez un bois plus large, ou rendez le coyau plus court ou plus raide.</translation>
    </message>
    <message>
        <source>Choose wider stock, or make the rafters shallower or the roof flatter.</source>
        <translation>Choisissez un bois plus large, ou des chevrons moins hauts ou un toit plus plat.</translation>
    </message>
    <message>
        <source>Choose {choice}.</source>
        <translation>Choisissez {choice}.</translation>
    </message>
    <message>
        <source>Choose {other} as {stock}, or measure again.</source>
        <translation>Choisissez {other} comme {stock}, ou mesurez de nouveau.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Cladding</source>
        <translation>Bardage</translation>
    </message>
    <message>
        <source>Cladding clearance</source>
        <translation>Jeu sous le bardage</translation>
    </message>
    <message>
        <source>Cladding moisture</source>
        <translation>Bois du bardage : humidité</translation>
    </message>
    <message>
        <source>Cladding stock</source>
        <translation>Bois du bardage</translation>
    </message>
    <message>
        <source>Cladding thickness</source>
        <translation>Bois du bardage : épaisseur</translation>
    </message>
    <message>
        <source>Cladding width</source>
        <translation>Bois du bardage : largeur</translation>
    </message>
    <message>
        <source>Cladding: a sheet, or a board for board cladding.</source>
        <translation>Bardage : un panneau, ou une planche pour un bardage en planches.</translation>
    </message>
    <message>
        <source>Clear area inside the base frame and the panels.</source>
        <translation>Section libre à l'intérieur du cadre de la base et des panneaux.</translation>
    </message>
    <message>
        <source>Clear gap between slats, square to them.</source>
        <translation>Jour libre entre les lames, d'équerre sur elles.</translation>
    </message>
    <message>
        <source>Clear opening {opening}, louvers {louvers}: {verdict}</source>
        <translation>Ouverture libre {opening}, lames {louvers} : {verdict}</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Jeux</translation>
    </message>
    <message>
        <source>Coats of paint over the primer.</source>
        <translation>Couches de peinture sur l’apprêt.</translation>
    </message>
    <message>
        <source>Coats of primer.</source>
        <translation>Couches d’apprêt.</translation>
    </message>
    <message>
        <source>Common rafter</source>
        <translation>Chevron</translation>
    </message>
    <message>
        <source>Compare with an earlier report</source>
        <translation>Comparer avec un rapport antérieur</translation>
    </message>
    <message>
        <source>Corner</source>
        <translation>Angle</translation>
    </message>
    <message>
        <source>Corner board</source>
        <translation>Planche d'angle</translation>
    </message>
    <message>
        <source>Corner board face</source>
        <translation>Face des planches d'angle</translation>
    </message>
    <message>
        <source>Corner board moisture</source>
        <translation>Bois des planches d'angle : humidité</translation>
    </message>
    <message>
        <source>Corner board stock</source>
        <translation>Bois des planches d'angle</translation>
    </message>
    <message>
        <source>Corner board thickness</source>
        <translation>Bois des planches d'angle : épaisseur</translation>
    </message>
    <message>
        <source>Corner board width</source>
        <translation>Bois des planches d'angle : largeur</translation>
    </message>
    <message>
        <source>Corner boards of the base.</source>
        <translation>Planches d'angle de la base.</translation>
    </message>
    <message>
        <source>Corner gusset of the cap plate</source>
        <translation>Gousset d'angle de la sablière haute</translation>
    </message>
    <message>
        <source>Count is {count}: one vent has {most} of {mark}, so it must be 1 to {most}, or 0 for all. Give the number of pieces that came out wrong.</source>
        <translation>Le nombre est {count} : un lanterneau a {most} pièces {mark}, il doit donc être de 1 à {most}, ou 0 pour toutes. Donnez le nombre de pièces ratées.</translation>
    </message>
    <message>
        <source>Course exposure</source>
        <translation>Pureau</translation>
    </message>
    <message>
        <source>Cut already, not to change</source>
        <translation>Déjà coupées, à ne pas changer</translation>
    </message>
    <message>
        <source>Cut list in a spreadsheet</source>
        <translation>Liste de coupe dans une feuille de calcul</translation>
    </message>
    <message>
        <source>Cut list of {vent}</source>
        <translation>Liste de coupe de {vent}</translation>
    </message>
    <message>
        <source>Cut report</source>
        <translation>Rapport de coupe</translation>
    </message>
    <message>
        <source>Cut the rough opening for the selected vent into the roof that it stands on; the roof itself is kept, and hidden.</source>
        <translation>Couper l'ouverture brute du lanterneau choisi dans le toit qui le porte ; le toit lui-même est gardé, et masqué.</translation>
    </message>
    <message>
        <source>Cut through the roof, which is drawn without a thickness.</source>
        <translation>Coupée à travers le toit, qui est dessiné sans épaisseur.</translation>
    </message>
    <message>
        <source>Cut through the roof, which is {depth} thick, plumb.</source>
        <translation>Coupée à travers le toit, épais de {depth}, mesuré d'aplomb.</translation>
    </message>
    <message>
        <source>Cut {depth} deep, plumb, as Depth says.</source>
        <translation>Coupée sur {depth} de profondeur, d'aplomb, comme le dit Depth.</translation>
    </message>
    <message>
        <source>Dado depth</source>
        <translation>Profondeur des rainures</translation>
    </message>
    <message>
        <source>Dado fit</source>
        <translation>Jeu des rainures</translation>
    </message>
    <message>
        <source>Defect allowance</source>
        <translation>Marge pour défauts</translation>
    </message>
    <message>
        <source>Depth of a louver panel, which is the width of its stiles.</source>
        <translation>Profondeur d'un panneau à lames, qui est la largeur de ses montants.</translation>
    </message>
    <message>
        <source>Depth of the dados that take the slats.</source>
        <translation>Profondeur des rainures qui reçoivent les lames.</translation>
    </message>
    <message>
        <source>Design wind speed of the place in m/s, as the code there gives it (three-second gust).</source>
        <translation>Vitesse de vent de calcul du lieu en m/s, telle que la norme locale la donne (rafale de trois secondes).</translation>
    </message>
    <message>
        <source>Diameter of the mast through the roof for a vane or finial; 0 for none.</source>
        <translation>Diamètre du mât qui traverse le toit pour une girouette ou un épi ; 0 sans mât.</translation>
    </message>
    <message>
        <source>Different marks.</source>
        <translation>Repères différents.</translation>
    </message>
    <message>
        <source>Direction of the roof sheathing's face grain.</source>
        <translation>Sens du fil de face du voligeage.</translation>
    </message>
    <message>
        <source>Distance of the roof opening's edge from the inside of the legs.</source>
        <translation>Distance du bord de l'ouverture du toit à l'intérieur des pieds.</translation>
    </message>
    <message>
        <source>Double-click a page in the tree to open it. Your own additions to a page are kept, and so is where you move a picture. Run this command again when the vent has changed.</source>
        <translation>Double-cliquez une page dans l’arbre pour l’ouvrir. Vos ajouts sur une page sont gardés, de même la place où vous déplacez une image. Relancez cette commande quand le lanterneau a changé.</translation>
    </message>
    <message>
        <source>Draw the vent on TechDraw pages: general arrangement, a sheet a stage, sheets of parts; run again, the pages follow the model and keep what you added.</source>
        <translation>Dessine le lanterneau sur des pages TechDraw : ensemble, une feuille par étage, feuilles des pièces ; relancée, la commande met les pages à jour d’après le modèle et garde vos ajouts.</translation>
    </message>
    <message>
        <source>Drip ring board</source>
        <translation>Planche de larmier</translation>
    </message>
    <message>
        <source>Drip ring.</source>
        <translation>Larmier.</translation>
    </message>
    <message>
        <source>Driver length</source>
        <translation>Longueur de la visseuse</translation>
    </message>
    <message>
        <source>Drop left back</source>
        <translation>Chute gauche arrière</translation>
    </message>
    <message>
        <source>Drop left front</source>
        <translation>Chute gauche avant</translation>
    </message>
    <message>
        <source>Drop right back</source>
        <translation>Chute droite arrière</translation>
    </message>
    <message>
        <source>Drop right front</source>
        <translation>Chute droite avant</translation>
    </message>
    <message>
        <source>Eave sheathing</source>
        <translation>Voligeage d'égout</translation>
    </message>
    <message>
        <source>Edit vent</source>
        <translation>Modifier le lanterneau</translation>
    </message>
    <message>
        <source>Empty: {auto}.</source>
        <translation>Vide : {auto}.</translation>
    </message>
    <message>
        <source>End distance</source>
        <translation>Distance au bout</translation>
    </message>
    <message>
        <source>End pitch</source>
        <translation>Pente des croupes</translation>
    </message>
    <message>
        <source>End trim</source>
        <translation>Éboutage</translation>
    </message>
    <message>
        <source>Enter the expression {value} once; then it can be taken away again and a number of {unit} be entered.</source>
        <translation>Entrez une fois l'expression {value} ; elle pourra ensuite être retirée et un nombre en {unit} être entré.</translation>
    </message>
    <message>
        <source>Exact numbers of a report</source>
        <translation>Nombres exacts d'un rapport</translation>
    </message>
    <message>
        <source>Exact numbers of the earlier report (cuts.json)</source>
        <translation>Nombres exacts du rapport antérieur (cuts.json)</translation>
    </message>
    <message>
        <source>Faces, edges and whole objects are picked together. Pick two slopes, or the ridge alone, or one whole roof.</source>
        <translation>Des faces, des arêtes et des objets entiers sont choisis ensemble. Choisissez deux versants, ou le faîtage seul, ou un toit entier.</translation>
    </message>
    <message>
        <source>Facing</source>
        <translation>Orientation</translation>
    </message>
    <message>
        <source>Fascia</source>
        <translation>Bandeau d'égout</translation>
    </message>
    <message>
        <source>Fascia and bed mould.</source>
        <translation>Bandeau d'égout et moulure.</translation>
    </message>
    <message>
        <source>Fascia moisture</source>
        <translation>Bois des bandeaux : humidité</translation>
    </message>
    <message>
        <source>Fascia stock</source>
        <translation>Bois des bandeaux</translation>
    </message>
    <message>
        <source>Fascia thickness</source>
        <translation>Bois des bandeaux : épaisseur</translation>
    </message>
    <message>
        <source>Fascia width</source>
        <translation>Bois des bandeaux : largeur</translation>
    </message>
    <message>
        <source>Flare pitch</source>
        <translation>Pente du coyau</translation>
    </message>
    <message>
        <source>Flare reach</source>
        <translation>Longueur du coyau</translation>
    </message>
    <message>
        <source>Floor area</source>
        <translation>Surface au sol</translation>
    </message>
    <message>
        <source>Floor ratio</source>
        <translation>Rapport à la surface au sol</translation>
    </message>
    <message>
        <source>Floor that the vents together air, in square metres.</source>
        <translation>Surface au sol que les lanterneaux aèrent ensemble, en mètres carrés.</translation>
    </message>
    <message>
        <source>Folder for the cut report</source>
        <translation>Dossier du rapport de coupe</translation>
    </message>
    <message>
        <source>Folder for the papers</source>
        <translation>Dossier pour les documents</translation>
    </message>
    <message>
        <source>Form of the vent's roof: hipped on every side; hipped with a kicked eave, two pitches a face; or two faces that end in gables.</source>
        <translation>Forme du toit du lanterneau : croupes de tous côtés ; croupes à coyau, deux pentes par face ; ou deux faces qui finissent en pignons.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Frame moisture</source>
        <translation>Bois de cadre : humidité</translation>
    </message>
    <message>
        <source>Frame stock</source>
        <translation>Bois de cadre</translation>
    </message>
    <message>
        <source>Frame thickness</source>
        <translation>Bois de cadre : épaisseur</translation>
    </message>
    <message>
        <source>Frame width</source>
        <translation>Bois de cadre : largeur</translation>
    </message>
    <message>
        <source>Free area</source>
        <translation>Section libre</translation>
    </message>
    <message>
        <source>Free area of one vent's louvers.</source>
        <translation>Section libre des lames d'un lanterneau.</translation>
    </message>
    <message>
        <source>Free area wanted from this vent; 0 where no target is set.</source>
        <translation>Section libre voulue de ce lanterneau ; 0 si aucune n'est fixée.</translation>
    </message>
    <message>
        <source>Frieze</source>
        <translation>Frise</translation>
    </message>
    <message>
        <source>From axis to axis of the vents along the ridge; 0 for one vent.</source>
        <translation>D'axe en axe des lanterneaux le long du faîtage ; 0 pour un seul.</translation>
    </message>
    <message>
        <source>From slat to slat, plumb.</source>
        <translation>De lame à lame, d'aplomb.</translation>
    </message>
    <message>
        <source>From the back end</source>
        <translation>Depuis le bout arrière</translation>
    </message>
    <message>
        <source>From the front end</source>
        <translation>Depuis le bout avant</translation>
    </message>
    <message>
        <source>From the gables' cladding to the back of the barge boards, level.</source>
        <translation>Du bardage des pignons au dos des planches de rive, de niveau.</translation>
    </message>
    <message>
        <source>From the middle</source>
        <translation>Depuis le milieu</translation>
    </message>
    <message>
        <source>From the plate's edge to the rafters' tails, level.</source>
        <translation>Du bord de la sablière au bout des chevrons, de niveau.</translation>
    </message>
    <message>
        <source>From the rafters' tails up to the break of a flared roof, level.</source>
        <translation>Du bout des chevrons jusqu'à la brisure d'un toit à coyau, de niveau.</translation>
    </message>
    <message>
        <source>From the ridge to the roof's peak.</source>
        <translation>Du faîtage au sommet du toit.</translation>
    </message>
    <message>
        <source>Gable end</source>
        <translation>Pignon</translation>
    </message>
    <message>
        <source>Gable ridge</source>
        <translation>Faîtage du toit à pignons</translation>
    </message>
    <message>
        <source>Gable-end apron</source>
        <translation>Bavette de pignon</translation>
    </message>
    <message>
        <source>Gable-end cladding</source>
        <translation>Bardage de pignon</translation>
    </message>
    <message>
        <source>Gable-end peak board</source>
        <translation>Planche de pointe de pignon</translation>
    </message>
    <message>
        <source>Gable-end screen</source>
        <translation>Grillage de pignon</translation>
    </message>
    <message>
        <source>Gable-end screen batten</source>
        <translation>Liteau du grillage de pignon</translation>
    </message>
    <message>
        <source>Gable-end sill</source>
        <translation>Appui de pignon</translation>
    </message>
    <message>
        <source>Gable-end sill bed</source>
        <translation>Cale d'appui de pignon</translation>
    </message>
    <message>
        <source>Gable-end slat</source>
        <translation>Lame de pignon</translation>
    </message>
    <message>
        <source>Gable-end stile</source>
        <translation>Montant de pignon</translation>
    </message>
    <message>
        <source>Gap all round where the louver stage drops inside the cladding.</source>
        <translation>Jeu tout autour, là où l'étage à lames entre dans le bardage.</translation>
    </message>
    <message>
        <source>Gap between a louver panel and the posts and rail around it.</source>
        <translation>Jeu entre un panneau à lames et les poteaux et la traverse autour de lui.</translation>
    </message>
    <message>
        <source>Gap between cladding boards.</source>
        <translation>Jeu entre les planches du bardage.</translation>
    </message>
    <message>
        <source>Gap between the drip ring and the cladding and corner boards under it.</source>
        <translation>Jeu entre le larmier et le bardage et les planches d'angle au-dessous.</translation>
    </message>
    <message>
        <source>Give a number, with a point for decimals, and what it is for: /m, /ft or each, or a length: 8 ft = 4.20.</source>
        <translation>Donnez un nombre, avec un point pour les décimales, et ce à quoi il se rapporte : /m, /ft ou each, ou une longueur : 8 ft = 4.20.</translation>
    </message>
    <message>
        <source>Give a number, with a point for decimals, and what it is for: /m, /ft or each.</source>
        <translation type="vanished">Indiquez un nombre, avec un point pour les décimales, et ce qu'il vaut : /m, /ft ou each.</translation>
    </message>
    <message>
        <source>Give all four, or set all four to 0.</source>
        <translation>Donnez les quatre, ou mettez les quatre à 0.</translation>
    </message>
    <message>
        <source>Give figures and a unit: 1200 mm, 3 1/2 ft.</source>
        <translation>Indiquez des chiffres et une unité : 1200 mm, 3 1/2 ft.</translation>
    </message>
    <message>
        <source>Give lengths above 0 mm and at most {longest:g} mm.</source>
        <translation>Indiquez des longueurs de plus de 0 mm et d'au plus {longest:g} mm.</translation>
    </message>
    <message>
        <source>Give the length of unbroken ridge, or make one vent.</source>
        <translation>Donnez la longueur de faîtage continu, ou faites un seul lanterneau.</translation>
    </message>
    <message>
        <source>Give the real size of a piece that was cut wrong, or say that it is lost: see whether it may stay, what packing fills the gap, what to take off, or which parameter lets the vent follow it.</source>
        <translation>Donner la dimension réelle d'une pièce mal coupée, ou dire qu'elle est perdue : voir si elle peut rester, quelle cale comble le jeu, ce qu'il faut retirer, ou quel paramètre la fait suivre par le lanterneau.</translation>
    </message>
    <message>
        <source>Give the stock, a colon and the lengths: 2x4: 1200, 900; 1x6: 2 m.</source>
        <translation>Indiquez le bois, deux-points et les longueurs : 2x4: 1200, 900; 1x6: 2 m.</translation>
    </message>
    <message>
        <source>Give the stock, a colon and the price: 2x4: 2.10/m; plywood 1/2: 38 each.</source>
        <translation>Indiquez le bois, deux-points et le prix : 2x4: 2.10/m; plywood 1/2: 38 each.</translation>
    </message>
    <message>
        <source>Give the width, or another number of vents.</source>
        <translation>Donnez la largeur, ou un autre nombre de lanterneaux.</translation>
    </message>
    <message>
        <source>Give the width, or the ridge length.</source>
        <translation>Donnez la largeur, ou la longueur du faîtage.</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Y aller</translation>
    </message>
    <message>
        <source>Head rail</source>
        <translation>Traverse de tête</translation>
    </message>
    <message>
        <source>Heel height</source>
        <translation>Hauteur de talon</translation>
    </message>
    <message>
        <source>Height above the ridge of the base's second rail on the gable sides (its lower edge).</source>
        <translation>Hauteur au-dessus du faîtage de la seconde traverse de la base côté pignon (son bord inférieur).</translation>
    </message>
    <message>
        <source>Height of the base's top above the ridge.</source>
        <translation>Hauteur du haut de la base au-dessus du faîtage.</translation>
    </message>
    <message>
        <source>Height of the centre of gravity above the ridge.</source>
        <translation>Hauteur du centre de gravité au-dessus du faîtage.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame.</source>
        <translation>Hauteur du cadre de l'étage à lames.</translation>
    </message>
    <message>
        <source>Hip rafter</source>
        <translation>Arêtier</translation>
    </message>
    <message>
        <source>Hip rafter slope</source>
        <translation>Pente des arêtiers</translation>
    </message>
    <message>
        <source>Hip slope</source>
        <translation>Pente des arêtes</translation>
    </message>
    <message>
        <source>Hips, jacks and commons.</source>
        <translation>Arêtiers, empannons et chevrons.</translation>
    </message>
    <message>
        <source>How deep the opening is cut under the roof's surface, plumb. 0: through the roof's own thickness, 600 mm at most.</source>
        <translation>Profondeur à laquelle l'ouverture est coupée sous la surface du toit, d'aplomb. 0 : à travers l'épaisseur du toit, 600 mm au plus.</translation>
    </message>
    <message>
        <source>How deep the opening is cut, plumb.</source>
        <translation>Profondeur à laquelle l'ouverture est coupée, d'aplomb.</translation>
    </message>
    <message>
        <source>How far legs and soles sit below the roof's finished surface, square to the slope: 0 on the covering, the covering's thickness on the deck.</source>
        <translation>De combien pieds et semelles descendent sous la surface finie du toit, d'équerre au versant : 0 sur la couverture, l'épaisseur de la couverture sur le support.</translation>
    </message>
    <message>
        <source>How far slats overlap at the rain angle.</source>
        <translation>De combien les lames se recouvrent sous l'angle de pluie.</translation>
    </message>
    <message>
        <source>How far the barn's ridge cap stands above its covering, plumb; soles and cladding are relieved over it. 0 if the cap is taken away under the vent.</source>
        <translation>De combien la faîtière de la grange dépasse sa couverture, d'aplomb ; semelles et bardage sont dégagés au-dessus. 0 si la faîtière est retirée sous le lanterneau.</translation>
    </message>
    <message>
        <source>How far the drip ring reaches beyond the corner boards.</source>
        <translation>De combien le larmier dépasse les planches d'angle.</translation>
    </message>
    <message>
        <source>How far the measured pitch may be off; the report says what it opens up at the foot.</source>
        <translation>De combien la pente mesurée peut être fausse ; le rapport dit ce que cela ouvre au pied.</translation>
    </message>
    <message>
        <source>How far the roof lies lower at the vent's +X end than at its −X end, both slopes' mean; negative where the −X end is lower.</source>
        <translation>De combien le toit est plus bas au bout +X du lanterneau qu'à son bout −X, moyenne des deux versants ; négatif si le bout −X est plus bas.</translation>
    </message>
    <message>
        <source>How far the vent's axis stands to the left of the ridge (to the right if negative).</source>
        <translation>De combien l'axe du lanterneau est à gauche du faîtage (à droite si négatif).</translation>
    </message>
    <message>
        <source>How far trim laps over the stiles and the frieze over the head rail.</source>
        <translation>De combien l'habillage recouvre les montants et la frise la traverse de tête.</translation>
    </message>
    <message>
        <source>How far your saw's blade tilts from upright.</source>
        <translation>De combien la lame de votre scie s'incline depuis l'aplomb.</translation>
    </message>
    <message>
        <source>How far your saw's gauge swings from square.</source>
        <translation>De combien le guide de votre scie pivote depuis l'équerre.</translation>
    </message>
    <message>
        <source>How many equal vents share the ridge.</source>
        <translation>Combien de lanterneaux égaux se partagent le faîtage.</translation>
    </message>
    <message>
        <source>How many pieces the vent has; 0 if it has none.</source>
        <translation>Combien de pièces a le lanterneau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>How much further the left slope drops at one end than at the other.</source>
        <translation>De combien le versant gauche descend plus à un bout qu'à l'autre.</translation>
    </message>
    <message>
        <source>How much further the right slope drops at one end than at the other.</source>
        <translation>De combien le versant droit descend plus à un bout qu'à l'autre.</translation>
    </message>
    <message>
        <source>How much of a new stick you reckon lost to knots, wane and splits, in percent of its length.</source>
        <translation>Ce que vous comptez perdre d'une barre neuve par les nœuds, le flache et les fentes, en pour cent de sa longueur.</translation>
    </message>
    <message>
        <source>How much of each course of the barn's shingles or tiles shows, up the slope; there is one step flashing for each.</source>
        <translation>Partie visible de chaque rang de bardeaux ou de tuiles de la grange, dans la pente ; à chacun correspond un solin à gradin.</translation>
    </message>
    <message>
        <source>How much wider a dado is than the slat is thick.</source>
        <translation>De combien une rainure est plus large que la lame n'est épaisse.</translation>
    </message>
    <message>
        <source>How planks turn a corner on a square plan: the gable side runs through and the eave side stops against it, or both are mitred. Other plans are always mitred.</source>
        <translation>Comment les planches tournent un angle sur plan carré : le côté pignon passe et le côté égout bute contre lui, ou les deux sont d'onglet. Les autres plans sont toujours d'onglet.</translation>
    </message>
    <message>
        <source>How the opening was cut.</source>
        <translation>Comment l'ouverture a été coupée.</translation>
    </message>
    <message>
        <source>How the pitch was measured, as it is to stand in the report.</source>
        <translation>Comment la pente a été mesurée, tel que cela doit figurer dans le rapport.</translation>
    </message>
    <message>
        <source>In kg.</source>
        <translation>En kilogrammes.</translation>
    </message>
    <message>
        <source>Inch fraction</source>
        <translation>Fraction de pouce</translation>
    </message>
    <message>
        <source>Inches are rounded to one part in so many on the report.</source>
        <translation>Les pouces sont arrondis dans le rapport à une telle fraction.</translation>
    </message>
    <message>
        <source>Included angle at the ridge {included} and {side} slope {slope}, each ± {reading_error}: left {left}, right {right}, the slope not read ± {error}.</source>
        <translation>Angle au faîtage {included} et versant {side} {slope}, chacun ± {reading_error} : gauche {left}, droite {right}, le versant non mesuré ± {error}.</translation>
    </message>
    <message>
        <source>Included angle at the ridge {included} ± {reading_error}: both slopes {pitch}, each ± {error}.</source>
        <translation>Angle au faîtage {included} ± {reading_error} : les deux versants {pitch}, chacun ± {error}.</translation>
    </message>
    <message>
        <source>It has {count} lengths, and at most {most} are read. Leave out what you do not use.</source>
        <translation>Il a {count} longueurs, et {most} au plus sont lues. Omettez ce que vous n'utilisez pas.</translation>
    </message>
    <message>
        <source>It holds no exact numbers of a report. Choose a cuts.json.</source>
        <translation>Il ne contient pas de nombres exacts d'un rapport. Choisissez un cuts.json.</translation>
    </message>
    <message>
        <source>It is not JSON: {error}.</source>
        <translation>Ce n'est pas du JSON : {error}.</translation>
    </message>
    <message>
        <source>It is not a parameter of this version.</source>
        <translation>Ce n'est pas un paramètre de cette version.</translation>
    </message>
    <message>
        <source>It is not an item of stock.</source>
        <translation>Ce n'est pas un article de la liste des bois.</translation>
    </message>
    <message>
        <source>It must be a list with at least one length that the item is sold in.</source>
        <translation>Il faut une liste d'au moins une longueur dans laquelle l'article est vendu.</translation>
    </message>
    <message>
        <source>It must be an object of names and values.</source>
        <translation>Il faut un objet de noms et de valeurs.</translation>
    </message>
    <message>
        <source>It must be an object of uses and names of items.</source>
        <translation>Il faut un objet d'emplois et de noms d'articles.</translation>
    </message>
    <message>
        <source>It must be “{format}”, version {format_version}: a cuts.json of a report.</source>
        <translation>Il faut « {format} », version {format_version} : le cuts.json d'un rapport.</translation>
    </message>
    <message>
        <source>It was written by another version of Louverwright, which lays out the same parameters otherwise. Compare with the version that wrote it, or write that report again.</source>
        <translation>Il a été écrit par une autre version de Louverwright, qui dispose autrement les mêmes paramètres. Comparez avec la version qui l'a écrit, ou écrivez ce rapport de nouveau.</translation>
    </message>
    <message>
        <source>Jack and common rafters on each side, between the hips; an odd number has a common at mid-side. Under a gable roof those between the gables' own. −1: automatic, by the sheathing's span.</source>
        <translation>Empannons et chevrons de chaque côté, entre les arêtiers ; un nombre impair met un chevron au milieu du côté. Sous un toit à pignons, ceux entre les chevrons de pignon. −1 : automatique, d'après la portée du voligeage.</translation>
    </message>
    <message>
        <source>Jack rafter</source>
        <translation>Empannon</translation>
    </message>
    <message>
        <source>Jacks and commons on each side with an eave; of a rectangle on its long sides.</source>
        <translation>Empannons et chevrons de chaque côté qui a un égout ; d'un rectangle, sur ses longs côtés.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Join it on a rafter or choose a smaller vent or a larger sheet.</source>
        <translation>Aboutez-le sur un chevron, ou choisissez un lanterneau plus petit ou un panneau plus grand.</translation>
    </message>
    <message>
        <source>Joint to be caulked between trim and drip ring.</source>
        <translation>Joint à calfeutrer entre habillage et larmier.</translation>
    </message>
    <message>
        <source>King post</source>
        <translation>Poinçon</translation>
    </message>
    <message>
        <source>King post moisture</source>
        <translation>Bois du poinçon : humidité</translation>
    </message>
    <message>
        <source>King post stock</source>
        <translation>Bois du poinçon</translation>
    </message>
    <message>
        <source>King post thickness</source>
        <translation>Bois du poinçon : épaisseur</translation>
    </message>
    <message>
        <source>King post width</source>
        <translation>Bois du poinçon : largeur</translation>
    </message>
    <message>
        <source>King post, square.</source>
        <translation>Poinçon, carré.</translation>
    </message>
    <message>
        <source>Large drawings</source>
        <translation>Grands dessins</translation>
    </message>
    <message>
        <source>Largest mitre at which your saw's blade still tilts fully; beyond it the tilt falls to nothing at the largest mitre.</source>
        <translation>Plus grand onglet auquel la lame de votre scie s'incline encore entièrement ; au-delà, l'inclinaison tombe à rien au plus grand onglet.</translation>
    </message>
    <message>
        <source>Leave one of them.</source>
        <translation>N'en laissez qu'un.</translation>
    </message>
    <message>
        <source>Left rise</source>
        <translation>Hauteur à gauche</translation>
    </message>
    <message>
        <source>Left run</source>
        <translation>Longueur à gauche</translation>
    </message>
    <message>
        <source>Left slope</source>
        <translation>Versant gauche</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Pied</translation>
    </message>
    <message>
        <source>Legs, posts, rails, soles, mullions and bearer.</source>
        <translation>Pieds, poteaux, traverses, semelles, meneaux et porte-mât.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Length of a rectangular vent over the cladding, along the ridge (with a corner to the ridge, along its first side's direction); 1:2 of the width at most.</source>
        <translation>Longueur d'un lanterneau rectangulaire hors bardage, le long du faîtage (avec un angle vers le faîtage : dans la direction de son premier côté) ; au plus 1:2 de la largeur.</translation>
    </message>
    <message>
        <source>Length of all eaves together, verges apart.</source>
        <translation>Longueur de tous les égouts ensemble, sans les rives.</translation>
    </message>
    <message>
        <source>Length of all verges of a gable roof together, up the slope.</source>
        <translation>Longueur de toutes les rives d'un toit à pignons ensemble, en montant le versant.</translation>
    </message>
    <message>
        <source>Length of one hip of the covering, eave to peak; 0 for a gable roof.</source>
        <translation>Longueur d'une arête de la couverture, de l'égout au sommet ; 0 pour un toit à pignons.</translation>
    </message>
    <message>
        <source>Length of the opening along the ridge, level; as its side but on a rectangle.</source>
        <translation>Longueur de l'ouverture le long du faîtage, de niveau ; égale à son côté, sauf sur un rectangle.</translation>
    </message>
    <message>
        <source>Length of the vent over the cladding, along the ridge; as the width but on a rectangle.</source>
        <translation>Longueur du lanterneau hors bardage, le long du faîtage ; égale à la largeur, sauf sur un rectangle.</translation>
    </message>
    <message>
        <source>Length of the vent's own ridge in the covering; 0 where the hips meet in a point.</source>
        <translation>Longueur du faîtage propre du lanterneau dans la couverture ; 0 si les arêtes se joignent en un point.</translation>
    </message>
    <message>
        <source>Length of unbroken ridge that the vents share; 0 if it does not matter.</source>
        <translation>Longueur de faîtage continu que les lanterneaux se partagent ; 0 si elle est indifférente.</translation>
    </message>
    <message>
        <source>Length of your driver with its bit, along the screw.</source>
        <translation>Longueur de votre visseuse avec son embout, dans l’axe de la vis.</translation>
    </message>
    <message>
        <source>Length × width × thickness</source>
        <translation>Longueur × largeur × épaisseur</translation>
    </message>
    <message>
        <source>Length, width and thickness of each piece's blank, in mm.</source>
        <translation>Longueur, largeur et épaisseur de l'ébauche de chaque pièce, en mm.</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Level the seat first, or measure again.</source>
        <translation>Mettez d'abord l'assise de niveau, ou mesurez de nouveau.</translation>
    </message>
    <message>
        <source>Lift limit</source>
        <translation>Limite de levage</translation>
    </message>
    <message>
        <source>List every mark as it stands in the report and find its pieces in the model, or the mark of a piece that is picked.</source>
        <translation>Lister tous les repères tels qu'ils figurent dans le rapport et trouver leurs pièces dans le modèle, ou le repère d'une pièce choisie.</translation>
    </message>
    <message>
        <source>List which lengths and angles changed since a report was written (its cuts.json), and which pieces already cut can be kept.</source>
        <translation>Lister les longueurs et les angles qui ont changé depuis qu'un rapport a été écrit (son cuts.json), et les pièces déjà coupées qui peuvent servir.</translation>
    </message>
    <message>
        <source>Long edges of the slats: ripped plumb to the stiles' faces, or left square.</source>
        <translation>Chants longs des lames : sciés d'aplomb au nu des montants, ou laissés d'équerre.</translation>
    </message>
    <message>
        <source>Longest clear width that a slat may bridge without a mullion.</source>
        <translation>Plus grande largeur libre qu'une lame peut franchir sans meneau.</translation>
    </message>
    <message>
        <source>Lookout</source>
        <translation>Console de rive</translation>
    </message>
    <message>
        <source>Louver height</source>
        <translation>Hauteur de l'étage à lames</translation>
    </message>
    <message>
        <source>Louver stage</source>
        <translation>Étage à lames</translation>
    </message>
    <message>
        <source>Louver weight</source>
        <translation>Poids de l'étage à lames</translation>
    </message>
    <message>
        <source>Louvered vent</source>
        <translation>Lanterneau à lames</translation>
    </message>
    <message>
        <source>Louvers</source>
        <translation>Lames</translation>
    </message>
    <message>
        <source>Louverwright's preferences: {sentence}</source>
        <translation>Préférences de Louverwright : {sentence}</translation>
    </message>
    <message>
        <source>Lower it below {most}.</source>
        <translation>Abaissez la valeur sous {most}.</translation>
    </message>
    <message>
        <source>Lower the base, make the vent narrower, or choose thicker frame stock, or give the gable sides a second rail.</source>
        <translation>Abaissez la base, rendez le lanterneau plus étroit, choisissez un bois de cadre plus épais, ou donnez une seconde traverse aux côtés pignon.</translation>
    </message>
    <message>
        <source>Lower the base, make the vent narrower, or choose thicker frame stock.</source>
        <translation>Abaissez la base, rendez le lanterneau plus étroit, ou choisissez un bois de cadre plus épais.</translation>
    </message>
    <message>
        <source>Main dimensions</source>
        <translation>Dimensions principales</translation>
    </message>
    <message>
        <source>Make a louvered vent in the active document, with its dimensions in a panel and a picture in the 3D view.</source>
        <translation>Faire un lanterneau à lames dans le document actif, avec ses dimensions dans un panneau et une image dans la vue 3D.</translation>
    </message>
    <message>
        <source>Make at least one of them.</source>
        <translation>Faites-en au moins une.</translation>
    </message>
    <message>
        <source>Make fewer vents, or narrower ones.</source>
        <translation>Faites moins de lanterneaux, ou de plus étroits.</translation>
    </message>
    <message>
        <source>Make it and the width differ by {least} or more, or set it to 0 for a square.</source>
        <translation>Faites qu'elle et la largeur diffèrent de {least} ou plus, ou mettez-la à 0 pour un carré.</translation>
    </message>
    <message>
        <source>Make it more nearly square.</source>
        <translation>Rapprochez-le du carré.</translation>
    </message>
    <message>
        <source>Make it no steeper than the slats, {slat_angle:g}°, and no thicker.</source>
        <translation>Ne le faites pas plus raide que les lames, {slat_angle:g}°, ni plus épais.</translation>
    </message>
    <message>
        <source>Make it smaller, and make fewer or narrower vents.</source>
        <translation>Réduisez-la, et faites moins de lanterneaux ou de plus étroits.</translation>
    </message>
    <message>
        <source>Make it steeper, or the vent longer.</source>
        <translation>Rendez-les plus raides, ou le lanterneau plus long.</translation>
    </message>
    <message>
        <source>Make it {least} or more, or choose narrower battens.</source>
        <translation>Mettez {least} ou plus, ou choisissez des liteaux plus étroits.</translation>
    </message>
    <message>
        <source>Make it {least} or more.</source>
        <translation>Mettez {least} ou plus.</translation>
    </message>
    <message>
        <source>Make the margin smaller, or the vent wider.</source>
        <translation>Réduisez la marge, ou élargissez le lanterneau.</translation>
    </message>
    <message>
        <source>Make the overhang narrower, the roof flatter, the heel higher or the tails thinner.</source>
        <translation>Rendez le débord plus étroit, le toit plus plat, le talon plus haut ou les abouts plus minces.</translation>
    </message>
    <message>
        <source>Make the overhang wider, the roof steeper, or the tails deeper.</source>
        <translation>Rendez le débord plus large, le toit plus raide, ou les abouts plus hauts.</translation>
    </message>
    <message>
        <source>Make the panel shallower, or choose wider frame stock.</source>
        <translation>Rendez le panneau moins profond, ou choisissez un bois de cadre plus large.</translation>
    </message>
    <message>
        <source>Make the panel shallower, or choose wider stile stock.</source>
        <translation>Rendez le panneau moins profond, ou choisissez un bois plus large pour les montants.</translation>
    </message>
    <message>
        <source>Make the panel shallower, the battens thinner or the posts wider.</source>
        <translation>Rendez le panneau moins profond, les liteaux plus minces ou les poteaux plus larges.</translation>
    </message>
    <message>
        <source>Make the panel shallower, the slats flatter, or choose wider slat stock.</source>
        <translation>Rendez le panneau moins profond, les lames plus plates, ou choisissez un bois de lames plus large.</translation>
    </message>
    <message>
        <source>Make the ring flatter, or the frame stock wider.</source>
        <translation>Rendez le larmier plus plat, ou le bois de cadre plus large.</translation>
    </message>
    <message>
        <source>Make the ring narrower or flatter.</source>
        <translation>Rendez le larmier plus étroit ou plus plat.</translation>
    </message>
    <message>
        <source>Make the roof flatter, or the rafters deeper.</source>
        <translation>Rendez le toit plus plat, ou les chevrons plus hauts.</translation>
    </message>
    <message>
        <source>Make the roof steeper or the vent wider, or board the gables.</source>
        <translation>Rendez le toit plus raide ou le lanterneau plus large, ou bardez les pignons.</translation>
    </message>
    <message>
        <source>Make the roof steeper, or leave the mast out.</source>
        <translation>Rendez le toit plus raide, ou supprimez le mât.</translation>
    </message>
    <message>
        <source>Make the sill flatter, or choose wider slat stock.</source>
        <translation>Rendez l'appui plus plat, ou choisissez un bois de lames plus large.</translation>
    </message>
    <message>
        <source>Make the sill flatter, or take fewer slats.</source>
        <translation>Rendez l'appui plus plat, ou prenez moins de lames.</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Mast bearer</source>
        <translation>Porte-mât</translation>
    </message>
    <message>
        <source>Mast diameter</source>
        <translation>Diamètre du mât</translation>
    </message>
    <message>
        <source>Mast step</source>
        <translation>Emplanture du mât</translation>
    </message>
    <message>
        <source>May be off by</source>
        <translation>Erreur possible</translation>
    </message>
    <message>
        <source>Measure again, plumb, at the corner of the vent.</source>
        <translation>Mesurez de nouveau, d'aplomb, à l'angle du lanterneau.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Measured on the roof</source>
        <translation>Mesuré sur le toit</translation>
    </message>
    <message>
        <source>Mend the expression or take it away.</source>
        <translation>Corrigez l'expression ou retirez-la.</translation>
    </message>
    <message>
        <source>Mesh with battens on the inner face of each panel.</source>
        <translation>Toile et liteaux sur la face intérieure de chaque panneau.</translation>
    </message>
    <message>
        <source>Millimetre step</source>
        <translation>Pas en millimètres</translation>
    </message>
    <message>
        <source>Millimetres are rounded to this on the report.</source>
        <translation>Les millimètres sont arrondis à ce pas dans le rapport.</translation>
    </message>
    <message>
        <source>Moisture of the {stock}, as measured, in percent of its dry weight; weights follow from it.</source>
        <translation>Humidité mesurée ({stock}), en pour cent de la masse anhydre ; les poids en découlent.</translation>
    </message>
    <message>
        <source>More than two slopes meet at the edge picked. Pick the two slopes of the ridge instead.</source>
        <translation>Plus de deux versants se joignent à l'arête choisie. Choisissez plutôt les deux versants du faîtage.</translation>
    </message>
    <message>
        <source>Most wood left on a leg's foot below the slopes in use, plumb.</source>
        <translation>Plus grand surplus de bois laissé au bas d'un pied sous les versants retenus, d'aplomb.</translation>
    </message>
    <message>
        <source>Move the vent nearer to the ridge, make it wider, or seat it on one slope.</source>
        <translation>Rapprochez le lanterneau du faîtage, élargissez-le, ou posez-le sur un seul versant.</translation>
    </message>
    <message>
        <source>Mullion</source>
        <translation>Meneau</translation>
    </message>
    <message>
        <source>Name of the job, as it stands in the report's title block.</source>
        <translation>Nom du chantier, tel qu'il figure dans le cartouche du rapport.</translation>
    </message>
    <message>
        <source>Narrowest place on the way to the roof: a hatch, a door, between the rails of a scaffold.</source>
        <translation>Endroit le plus étroit sur le chemin du toit : une trappe, une porte, entre les garde-corps d'un échafaudage.</translation>
    </message>
    <message>
        <source>Net free area of the louvers: head and sill gaps are closed, screen taken off.</source>
        <translation>Section libre des lames : jours de tête et d'appui fermés, grillage déduit.</translation>
    </message>
    <message>
        <source>Net free area wanted from each vent, in square metres.</source>
        <translation>Section libre voulue de chaque lanterneau, en mètres carrés.</translation>
    </message>
    <message>
        <source>New vent</source>
        <translation>Nouveau lanterneau</translation>
    </message>
    <message>
        <source>New vents</source>
        <translation>Nouveaux lanterneaux</translation>
    </message>
    <message>
        <source>New vents begin with these. Vents that are there keep their own.</source>
        <translation>Les nouveaux lanterneaux commencent ainsi. Ceux qui existent gardent leurs valeurs.</translation>
    </message>
    <message>
        <source>No roof is taken: the vent stands free, and its pitches are entered by hand.</source>
        <translation>Aucun toit n'est pris : le lanterneau est libre, et ses pentes sont entrées à la main.</translation>
    </message>
    <message>
        <source>No size is given: length, width or thickness of the finished piece is needed. Give one, or say that the piece is lost.</source>
        <translation>Aucune dimension n'est donnée : il faut la longueur, la largeur ou l'épaisseur de la pièce finie. Donnez-en une, ou dites que la pièce est perdue.</translation>
    </message>
    <message>
        <source>Not made here: bought, used again, or not wanted. Its pieces are in no model, count or weight, the report lists it as left out, and its neighbours stay as they are.</source>
        <translation>N'est pas faite ici : achetée, réemployée, ou non voulue. Ses éléments ne sont dans aucun modèle, nombre ou poids, le rapport la donne comme omise, et ses voisines restent comme elles sont.</translation>
    </message>
    <message>
        <source>Note of {mark} ({name})</source>
        <translation>Note de {mark} ({name})</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Nothing can be said about this part.</source>
        <translation>On ne peut rien dire de cette pièce.</translation>
    </message>
    <message>
        <source>Nothing is left of the opening: {name} covers it. Set a thinner board, a smaller opening margin, or a wider vent.</source>
        <translation>Il ne reste rien de l'ouverture : {name} la couvre. Mettez une planche plus mince, une marge de l'ouverture plus petite, ou un lanterneau plus large.</translation>
    </message>
    <message>
        <source>Nothing is picked. {needed}.</source>
        <translation>Rien n'est choisi. {needed}.</translation>
    </message>
    <message>
        <source>Nothing is written where {what} is needed: write {what}.</source>
        <translation>Il manque ici quelque chose ; il faut {what}.</translation>
    </message>
    <message>
        <source>Nothing of what was picked looks up at a pitch of less than {steepest:g}°: there is no roof to stand a vent on. Pick the roof, one of its slopes, or its ridge.</source>
        <translation>Rien de ce qui est choisi ne regarde vers le haut avec une pente de moins de {steepest:g}° : il n'y a pas de toit où poser un lanterneau. Choisissez le toit, un de ses versants ou son faîtage.</translation>
    </message>
    <message>
        <source>Number of sides of the plan: 4, 6 or 8.</source>
        <translation>Nombre de côtés du plan : 4, 6 ou 8.</translation>
    </message>
    <message>
        <source>Number of the arrangement of these properties.</source>
        <translation>Numéro de la disposition de ces propriétés.</translation>
    </message>
    <message>
        <source>Of the free area wanted, {area}, the vent gives all.</source>
        <translation>La section libre voulue, {area}, est entièrement donnée par le lanterneau.</translation>
    </message>
    <message>
        <source>Of the free area wanted, {area}, {missing} is missing; the narrowest is the {narrowest}.</source>
        <translation>De la section libre voulue, {area}, il manque {missing} ; le passage le plus étroit : {narrowest}.</translation>
    </message>
    <message>
        <source>Offcuts that you have already, as stock and lengths: 2x4: 1200, 900; 1x6: 2 m. A bare number is in mm.</source>
        <translation>Chutes que vous avez déjà, sous la forme bois et longueurs : 2x4: 1200, 900; 1x6: 2 m. Un nombre seul est en mm.</translation>
    </message>
    <message>
        <source>On a roof that is drawn: how far along the ridge the vent's axis stands from the end that FromEnd names. Several vents stand by EndDistance.</source>
        <translation>Sur un toit dessiné : distance, le long du faîtage, de l'axe du lanterneau au bout que nomme FromEnd. Plusieurs lanterneaux se placent d'après EndDistance.</translation>
    </message>
    <message>
        <source>Open the folder</source>
        <translation>Ouvrir le dossier</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Ouverture</translation>
    </message>
    <message>
        <source>Opening margin</source>
        <translation>Marge de l'ouverture</translation>
    </message>
    <message>
        <source>Opening margin is {margin}: nothing is left of the opening between the legs. Set it below {most}.</source>
        <translation>Marge de l'ouverture vaut {margin} : il ne reste rien de l'ouverture entre les pieds. Mettez-la au-dessous de {most}.</translation>
    </message>
    <message>
        <source>Overall height</source>
        <translation>Hauteur totale</translation>
    </message>
    <message>
        <source>Overall width</source>
        <translation>Largeur totale</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Débord</translation>
    </message>
    <message>
        <source>Own stock of {mark} ({name})</source>
        <translation>Bois propre de {mark} ({name})</translation>
    </message>
    <message>
        <source>Paint coats</source>
        <translation>Couches de peinture</translation>
    </message>
    <message>
        <source>Paint coverage</source>
        <translation>Rendement de la peinture</translation>
    </message>
    <message>
        <source>Panel clearance</source>
        <translation>Jeu du panneau</translation>
    </message>
    <message>
        <source>Panel depth</source>
        <translation>Profondeur du panneau</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Format du papier</translation>
    </message>
    <message>
        <source>Paper that the report is laid out for.</source>
        <translation>Papier pour lequel le rapport est mis en page.</translation>
    </message>
    <message>
        <source>Paper units</source>
        <translation>Unités sur papier</translation>
    </message>
    <message>
        <source>Papers for the shop</source>
        <translation>Documents pour l'atelier</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Part, yours to set</source>
        <translation>Pièce, à vous de régler</translation>
    </message>
    <message>
        <source>Parts and marks</source>
        <translation>Pièces et repères</translation>
    </message>
    <message>
        <source>Passage width</source>
        <translation>Largeur de passage</translation>
    </message>
    <message>
        <source>Pick two slopes, the ridge, one slope, or the whole roof</source>
        <translation>Choisissez deux versants, le faîtage, un versant, ou le toit entier</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Pieces of the parts that are left out: not made here, and in no other count.</source>
        <translation>Éléments des pièces omises : non faits ici, et dans aucun autre nombre.</translation>
    </message>
    <message>
        <source>Pieces to cut for all vents on the ridge.</source>
        <translation>Pièces à couper pour tous les lanterneaux du faîtage.</translation>
    </message>
    <message>
        <source>Pieces to cut.</source>
        <translation>Pièces à couper.</translation>
    </message>
    <message>
        <source>Pitch error</source>
        <translation>Erreur de pente</translation>
    </message>
    <message>
        <source>Pitch left</source>
        <translation>Pente gauche</translation>
    </message>
    <message>
        <source>Pitch of a flared roof's eave, below the break.</source>
        <translation>Pente de l'égout d'un toit à coyau, sous la brisure.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, over its short sides, where it is another than the long faces'; their overhang follows, so that all eaves are level.</source>
        <translation>Pente des croupes d'un rectangle, au-dessus de ses petits côtés, si elle diffère de celle des longues faces ; leur débord en découle, pour que tous les égouts soient de niveau.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, where it differs; else 0.</source>
        <translation>Pente des croupes d'un rectangle, si elle diffère ; sinon 0.</translation>
    </message>
    <message>
        <source>Pitch of the barn's left slope that the vent is made to.</source>
        <translation>Pente du versant gauche de la grange pour laquelle le lanterneau est fait.</translation>
    </message>
    <message>
        <source>Pitch of the barn's right slope that the vent is made to.</source>
        <translation>Pente du versant droit de la grange pour laquelle le lanterneau est fait.</translation>
    </message>
    <message>
        <source>Pitch of the faces below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Pente des faces sous la brisure d'un toit à coyau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your left when you look along the vent's +X axis, from the level.</source>
        <translation>Pente du versant à votre gauche quand vous regardez le long de l'axe +X du lanterneau, depuis l'horizontale.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your right when you look along the vent's +X axis, from the level.</source>
        <translation>Pente du versant à votre droite quand vous regardez le long de l'axe +X du lanterneau, depuis l'horizontale.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces from the level (not the slope of its hips).</source>
        <translation>Pente des faces du toit du lanterneau depuis l'horizontale (non celle de ses arêtes).</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces, which is not the slope of its hips.</source>
        <translation>Pente des faces du toit du lanterneau, qui n'est pas celle de ses arêtes.</translation>
    </message>
    <message>
        <source>Pitch right</source>
        <translation>Pente droite</translation>
    </message>
    <message>
        <source>Plate moisture</source>
        <translation>Bois de sablière : humidité</translation>
    </message>
    <message>
        <source>Plate stock</source>
        <translation>Bois de sablière</translation>
    </message>
    <message>
        <source>Plate thickness</source>
        <translation>Bois de sablière : épaisseur</translation>
    </message>
    <message>
        <source>Plate width</source>
        <translation>Bois de sablière : largeur</translation>
    </message>
    <message>
        <source>Plumb depth of the rafters' tails at the fascia.</source>
        <translation>Hauteur d'aplomb des abouts de chevrons au bandeau.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering {where}: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope.</source>
        <translation>Chute d'aplomb depuis le niveau du point le plus haut du faîtage sous le lanterneau jusqu'à la couverture {where} : à l'angle du rectangle autour du plan, hors bardage. Donnez les quatre chutes ou aucune ; les pentes découlent alors de la plus petite chute de chaque versant.</translation>
    </message>
    <message>
        <source>Plumb height of the cladding's foot above the roof covering.</source>
        <translation>Hauteur d'aplomb du bas du bardage au-dessus de la couverture.</translation>
    </message>
    <message>
        <source>Plumb height of the roof sheathing's underside above the plate's outer edge.</source>
        <translation>Hauteur d'aplomb du dessous du voligeage au-dessus du bord extérieur de la sablière.</translation>
    </message>
    <message>
        <source>Post face</source>
        <translation>Face des poteaux</translation>
    </message>
    <message>
        <source>Post plank</source>
        <translation>Planche de poteau</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Prix</translation>
    </message>
    <message>
        <source>Primer coats</source>
        <translation>Couches de primaire</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Pull the vent's stages and pieces apart in the 3D view, or take sides away to look in; closing puts all together.</source>
        <translation>Écarter dans la vue 3D les étages et les pièces du lanterneau, ou retirer des côtés pour regarder dedans ; à la fermeture tout se rassemble.</translation>
    </message>
    <message>
        <source>Put it in quotes.</source>
        <translation>Mettez-le entre guillemets.</translation>
    </message>
    <message>
        <source>Qt could not begin to draw the PDF.</source>
        <translation>Qt n'a pas pu commencer à dessiner le PDF.</translation>
    </message>
    <message>
        <source>Rafter moisture</source>
        <translation>Bois des chevrons : humidité</translation>
    </message>
    <message>
        <source>Rafter stock</source>
        <translation>Bois des chevrons</translation>
    </message>
    <message>
        <source>Rafter thickness</source>
        <translation>Bois des chevrons : épaisseur</translation>
    </message>
    <message>
        <source>Rafter width</source>
        <translation>Bois des chevrons : largeur</translation>
    </message>
    <message>
        <source>Rafters per side</source>
        <translation>Chevrons par côté</translation>
    </message>
    <message>
        <source>Rain angle</source>
        <translation>Angle de pluie</translation>
    </message>
    <message>
        <source>Raise it to {least} or more.</source>
        <translation>Relevez à {least} ou plus.</translation>
    </message>
    <message>
        <source>Raise it to {need} or more, or take deeper rafters.</source>
        <translation>Relevez à {need} ou plus, ou prenez des chevrons plus hauts.</translation>
    </message>
    <message>
        <source>Raise the heel, or take a shallower frame stock.</source>
        <translation>Relevez le talon, ou prenez un bois de cadre moins haut.</translation>
    </message>
    <message>
        <source>Read from the roof that is drawn</source>
        <translation>Lu sur le toit dessiné</translation>
    </message>
    <message>
        <source>Read on the slopes: left {left}, right {right}, each ± {reading_error}.</source>
        <translation>Lu sur les versants : gauche {left}, droite {right}, chacun ± {reading_error}.</translation>
    </message>
    <message>
        <source>Real {size}</source>
        <translation>{size} réelle</translation>
    </message>
    <message>
        <source>Remarks of your own, printed on the report's first page.</source>
        <translation>Vos propres remarques, imprimées à la première page du rapport.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Revision of the model, as it stands in the report's title block.</source>
        <translation>Révision du modèle, telle qu'elle figure dans le cartouche du rapport.</translation>
    </message>
    <message>
        <source>Ridge boards, rafters and others that are drawn and must not be cut: each takes away what lies plumb over or under it.</source>
        <translation>Pannes faîtières, chevrons et autres qui sont dessinés et ne doivent pas être coupés : chacun retire ce qui est d'aplomb au-dessus ou au-dessous de lui.</translation>
    </message>
    <message>
        <source>Ridge cap height</source>
        <translation>Hauteur de la faîtière</translation>
    </message>
    <message>
        <source>Ridge cap width</source>
        <translation>Largeur de la faîtière</translation>
    </message>
    <message>
        <source>Ridge length</source>
        <translation>Longueur du faîtage</translation>
    </message>
    <message>
        <source>Ridge moisture</source>
        <translation>Bois de faîtage : humidité</translation>
    </message>
    <message>
        <source>Ridge offset</source>
        <translation>Écart au faîtage</translation>
    </message>
    <message>
        <source>Ridge piece</source>
        <translation>Pièce de faîtage</translation>
    </message>
    <message>
        <source>Ridge piece of a rectangle's or a gable's roof.</source>
        <translation>Pièce de faîtage du toit d'un rectangle ou d'un toit à pignons.</translation>
    </message>
    <message>
        <source>Ridge stock</source>
        <translation>Bois de faîtage</translation>
    </message>
    <message>
        <source>Ridge thickness</source>
        <translation>Bois de faîtage : épaisseur</translation>
    </message>
    <message>
        <source>Ridge width</source>
        <translation>Bois de faîtage : largeur</translation>
    </message>
    <message>
        <source>Right rise</source>
        <translation>Hauteur à droite</translation>
    </message>
    <message>
        <source>Right run</source>
        <translation>Longueur à droite</translation>
    </message>
    <message>
        <source>Right slope</source>
        <translation>Versant droit</translation>
    </message>
    <message>
        <source>Ring clearance</source>
        <translation>Jeu du larmier</translation>
    </message>
    <message>
        <source>Ring moisture</source>
        <translation>Bois du larmier : humidité</translation>
    </message>
    <message>
        <source>Ring projection</source>
        <translation>Saillie du larmier</translation>
    </message>
    <message>
        <source>Ring slope</source>
        <translation>Pente du larmier</translation>
    </message>
    <message>
        <source>Ring stock</source>
        <translation>Bois du larmier</translation>
    </message>
    <message>
        <source>Ring thickness</source>
        <translation>Bois du larmier : épaisseur</translation>
    </message>
    <message>
        <source>Ring width</source>
        <translation>Bois du larmier : largeur</translation>
    </message>
    <message>
        <source>Rise and run</source>
        <translation>Hauteur et longueur</translation>
    </message>
    <message>
        <source>Rise over run: left {pitch_left}, right {pitch_right}, tape ± {tape}, which is ± {error}.</source>
        <translation>Hauteur sur longueur : gauche {pitch_left}, droite {pitch_right}, ruban ± {tape}, soit ± {error}.</translation>
    </message>
    <message>
        <source>Roof form</source>
        <translation>Forme du toit</translation>
    </message>
    <message>
        <source>Roof opening</source>
        <translation>Ouverture du toit</translation>
    </message>
    <message>
        <source>Roof opening area</source>
        <translation>Surface de l'ouverture du toit</translation>
    </message>
    <message>
        <source>Roof pitch</source>
        <translation>Pente du toit</translation>
    </message>
    <message>
        <source>Roof sheathing</source>
        <translation>Voligeage</translation>
    </message>
    <message>
        <source>Roof sheathing.</source>
        <translation>Voligeage.</translation>
    </message>
    <message>
        <source>Roof stage</source>
        <translation>Étage du toit</translation>
    </message>
    <message>
        <source>Roof weight</source>
        <translation>Poids de l'étage du toit</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Rangée</translation>
    </message>
    <message>
        <source>Saw compound</source>
        <translation>Coupe composée de la scie</translation>
    </message>
    <message>
        <source>Saw crosscut</source>
        <translation>Largeur de coupe de la scie</translation>
    </message>
    <message>
        <source>Saw depth</source>
        <translation>Profondeur de coupe de la scie</translation>
    </message>
    <message>
        <source>Saw kerf</source>
        <translation>Trait de scie</translation>
    </message>
    <message>
        <source>Saw mitre</source>
        <translation>Onglet de la scie</translation>
    </message>
    <message>
        <source>Saw tilt</source>
        <translation>Inclinaison de la scie</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Grillage</translation>
    </message>
    <message>
        <source>Screen batten</source>
        <translation>Liteau du grillage</translation>
    </message>
    <message>
        <source>Screen factor</source>
        <translation>Facteur du grillage</translation>
    </message>
    <message>
        <source>Screen mesh.</source>
        <translation>Toile du grillage.</translation>
    </message>
    <message>
        <source>Screen stock</source>
        <translation>Toile du grillage</translation>
    </message>
    <message>
        <source>Screen thickness</source>
        <translation>Toile du grillage : épaisseur</translation>
    </message>
    <message>
        <source>Scribe allowance</source>
        <translation>Surplus à tracer</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Assise</translation>
    </message>
    <message>
        <source>Seat depth</source>
        <translation>Profondeur d'assise</translation>
    </message>
    <message>
        <source>See the list of parameters.</source>
        <translation>Voyez la liste des paramètres.</translation>
    </message>
    <message>
        <source>Select two slopes, the ridge, one slope or the whole roof in the 3D view or the tree first.</source>
        <translation>Choisissez d'abord deux versants, le faîtage, un versant ou le toit entier dans la vue 3D ou l'arborescence.</translation>
    </message>
    <message>
        <source>Set a space behind the comma between lengths, and write decimals with a point.</source>
        <translation>Mettez une espace après la virgule entre les longueurs, et écrivez les décimales avec un point.</translation>
    </message>
    <message>
        <source>Set all four to 0 and give the pitch, or seat the vent on the ridge.</source>
        <translation>Mettez les quatre à 0 et donnez la pente, ou posez le lanterneau sur le faîtage.</translation>
    </message>
    <message>
        <source>Set an even number of rafters, or −1 for automatic.</source>
        <translation>Mettez un nombre pair de chevrons, ou −1 pour automatique.</translation>
    </message>
    <message>
        <source>Set an odd number of rafters, or −1 for automatic.</source>
        <translation>Mettez un nombre impair de chevrons, ou −1 pour automatique.</translation>
    </message>
    <message>
        <source>Set by the expression {text}</source>
        <translation>Fixé par l'expression {text}</translation>
    </message>
    <message>
        <source>Set it below {most}.</source>
        <translation>Mettez moins de {most}.</translation>
    </message>
    <message>
        <source>Set it to 0 for no relief, or to {least_cap} or more.</source>
        <translation>Mettez-la à 0 pour ne rien dégager, ou à {least_cap} ou plus.</translation>
    </message>
    <message>
        <source>Set it to 0 for none, or make the vent square.</source>
        <translation>Mettez 0 pour aucun, ou faites le lanterneau carré.</translation>
    </message>
    <message>
        <source>Set it to 0 for none, or raise the base.</source>
        <translation>Mettez 0 pour aucune, ou relevez la base.</translation>
    </message>
    <message>
        <source>Set it to 0, or take 4 sides.</source>
        <translation>Mettez 0, ou prenez 4 côtés.</translation>
    </message>
    <message>
        <source>Set it to 0, or take a rectangle and a hip roof.</source>
        <translation>Mettez 0, ou prenez un rectangle et un toit à croupes.</translation>
    </message>
    <message>
        <source>Set it to 0.1, 0.5 or 1.</source>
        <translation>Mettez 0.1, 0.5 ou 1.</translation>
    </message>
    <message>
        <source>Set it to 8, 16, 32 or 64.</source>
        <translation>Mettez 8, 16, 32 ou 64.</translation>
    </message>
    <message>
        <source>Set it to {least} or more.</source>
        <translation>Mettez {least} ou plus.</translation>
    </message>
    <message>
        <source>Set it to {most:g}° or less, or take a plain hip roof.</source>
        <translation>Mettez {most:g}° ou moins, ou prenez un simple toit à croupes.</translation>
    </message>
    <message>
        <source>Set it to {most} or less, or make the vents narrower.</source>
        <translation>Mettez {most} ou moins, ou rendez les lanterneaux plus étroits.</translation>
    </message>
    <message>
        <source>Set it to {most} or less, or take deeper rafters.</source>
        <translation>Mettez {most} ou moins, ou prenez des chevrons plus hauts.</translation>
    </message>
    <message>
        <source>Set it to {most} or less.</source>
        <translation>Mettez {most} ou moins.</translation>
    </message>
    <message>
        <source>Share of the opening that the mesh leaves free (1/4 in hardware cloth 1.0, 1/8 in mesh 0.8).</source>
        <translation>Part de l'ouverture que la toile laisse libre (grillage de 1/4 de pouce 1,0, toile de 1/8 de pouce 0,8).</translation>
    </message>
    <message>
        <source>Sheathing grain</source>
        <translation>Fil du voligeage</translation>
    </message>
    <message>
        <source>Sheathing moisture</source>
        <translation>Panneau du voligeage : humidité</translation>
    </message>
    <message>
        <source>Sheathing span</source>
        <translation>Portée du voligeage</translation>
    </message>
    <message>
        <source>Sheathing stock</source>
        <translation>Panneau du voligeage</translation>
    </message>
    <message>
        <source>Sheathing thickness</source>
        <translation>Panneau du voligeage : épaisseur</translation>
    </message>
    <message>
        <source>Sheathing's underside above the plate's outer edge, plumb.</source>
        <translation>Dessous du voligeage au-dessus du bord extérieur de la sablière, d'aplomb.</translation>
    </message>
    <message>
        <source>Sheet cladding, or upright boards with a gap.</source>
        <translation>Bardage en panneaux, ou planches verticales avec un jeu.</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Atelier</translation>
    </message>
    <message>
        <source>Shop drawings</source>
        <translation>Dessins d’atelier</translation>
    </message>
    <message>
        <source>Shop drawings of {vent}</source>
        <translation>Dessins d’atelier de {vent}</translation>
    </message>
    <message>
        <source>Shop drawings on the next larger paper: A3 for A4, Tabloid for Letter.</source>
        <translation>Dessins d’atelier sur le papier de taille supérieure : A3 pour A4, Tabloid pour Letter.</translation>
    </message>
    <message>
        <source>Shop drawings: {made} pages made, {renewed} brought up to date, {removed} taken away.</source>
        <translation>Dessins d’atelier : {made} pages créées, {renewed} mises à jour, {removed} retirées.</translation>
    </message>
    <message>
        <source>Shop offcuts</source>
        <translation>Chutes disponibles</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <translation>Raccourcissez-le.</translation>
    </message>
    <message>
        <source>Shortest offcut</source>
        <translation>Chute la plus courte</translation>
    </message>
    <message>
        <source>Shortest offcut that you keep.</source>
        <translation>Chute la plus courte que vous gardez.</translation>
    </message>
    <message>
        <source>Shortest piece</source>
        <translation>Pièce la plus courte</translation>
    </message>
    <message>
        <source>Shortest piece that you let your saw cut without a holder.</source>
        <translation>Pièce la plus courte que vous laissez couper à votre scie sans support.</translation>
    </message>
    <message>
        <source>Show the vent as often as its property Vents says, spaced along its RidgeLength; those beyond that number are taken away.</source>
        <translation>Montrer le lanterneau autant de fois que le dit sa propriété Vents, réparti sur sa RidgeLength ; ceux qui dépassent ce nombre sont retirés.</translation>
    </message>
    <message>
        <source>Side of the opening to cut in the roof, level; across the ridge.</source>
        <translation>Côté de l'ouverture à couper dans le toit, de niveau ; en travers du faîtage.</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Côtés</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Appui</translation>
    </message>
    <message>
        <source>Sill bed</source>
        <translation>Cale d'appui</translation>
    </message>
    <message>
        <source>Sill slope</source>
        <translation>Pente de l'appui</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Slat</source>
        <translation>Lame</translation>
    </message>
    <message>
        <source>Slat angle</source>
        <translation>Angle des lames</translation>
    </message>
    <message>
        <source>Slat count</source>
        <translation>Nombre de lames</translation>
    </message>
    <message>
        <source>Slat edges</source>
        <translation>Chants des lames</translation>
    </message>
    <message>
        <source>Slat moisture</source>
        <translation>Bois des lames : humidité</translation>
    </message>
    <message>
        <source>Slat spacing</source>
        <translation>Écartement des lames</translation>
    </message>
    <message>
        <source>Slat span</source>
        <translation>Portée des lames</translation>
    </message>
    <message>
        <source>Slat stock</source>
        <translation>Bois des lames</translation>
    </message>
    <message>
        <source>Slat thickness</source>
        <translation>Bois des lames : épaisseur</translation>
    </message>
    <message>
        <source>Slat width</source>
        <translation>Bois des lames : largeur</translation>
    </message>
    <message>
        <source>Slats</source>
        <translation>Lames</translation>
    </message>
    <message>
        <source>Slats and sills.</source>
        <translation>Lames et appuis.</translation>
    </message>
    <message>
        <source>Slats in each gable end, without the sill.</source>
        <translation>Lames de chaque pignon, sans l'appui.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill.</source>
        <translation>Lames d'un panneau, sans l'appui.</translation>
    </message>
    <message>
        <source>Slope of the drip ring from the level.</source>
        <translation>Pente du larmier depuis l'horizontale.</translation>
    </message>
    <message>
        <source>Slope of the hips below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Pente des arêtes sous la brisure d'un toit à coyau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>Slope of the hips, which is not the pitch of the faces; 0 for a gable roof.</source>
        <translation>Pente des arêtes, qui n'est pas celle des faces ; 0 pour un toit à pignons.</translation>
    </message>
    <message>
        <source>Slope of the sill from the level.</source>
        <translation>Pente de l'appui depuis l'horizontale.</translation>
    </message>
    <message>
        <source>Slope of the slats from the level.</source>
        <translation>Pente des lames depuis l'horizontale.</translation>
    </message>
    <message>
        <source>Slope of the vent's hips from the level; if it is given, the faces' pitch follows from it and the roof pitch is left aside.</source>
        <translation>Pente des arêtes du lanterneau depuis l'horizontale ; si elle est donnée, la pente des faces en découle et la pente du toit est laissée de côté.</translation>
    </message>
    <message>
        <source>Soffit</source>
        <translation>Sous-face</translation>
    </message>
    <message>
        <source>Soffit moisture</source>
        <translation>Bois de la sous-face : humidité</translation>
    </message>
    <message>
        <source>Soffit stock</source>
        <translation>Bois de la sous-face</translation>
    </message>
    <message>
        <source>Soffit thickness</source>
        <translation>Bois de la sous-face : épaisseur</translation>
    </message>
    <message>
        <source>Soffit width</source>
        <translation>Bois de la sous-face : largeur</translation>
    </message>
    <message>
        <source>Soffit.</source>
        <translation>Sous-face.</translation>
    </message>
    <message>
        <source>Sole</source>
        <translation>Semelle</translation>
    </message>
    <message>
        <source>Spoiled, lost or left out</source>
        <translation>Gâchée, perdue ou oubliée</translation>
    </message>
    <message>
        <source>Square metres of floor for one of free area: 150 by the usual rule for attics, 300 under its conditions.</source>
        <translation>Mètres carrés de sol pour un de section libre : 150 selon la règle usuelle des combles, 300 sous ses conditions.</translation>
    </message>
    <message>
        <source>Square metres that a litre of primer or paint covers in one coat, as its tin says.</source>
        <translation>Mètres carrés couverts en une couche par un litre d’apprêt ou de peinture, comme l’indique le pot.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étage</translation>
    </message>
    <message>
        <source>Stage clearance</source>
        <translation>Jeu de l'étage</translation>
    </message>
    <message>
        <source>Stages apart</source>
        <translation>Étages écartés</translation>
    </message>
    <message>
        <source>Stand free</source>
        <translation>Laisser libre</translation>
    </message>
    <message>
        <source>Steepest sight line, rising inward, that the slats must still block.</source>
        <translation>Ligne de vue la plus raide, montant vers l'intérieur, que les lames doivent encore cacher.</translation>
    </message>
    <message>
        <source>Stile</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>Stile moisture</source>
        <translation>Bois des montants : humidité</translation>
    </message>
    <message>
        <source>Stile stock</source>
        <translation>Bois des montants</translation>
    </message>
    <message>
        <source>Stile thickness</source>
        <translation>Bois des montants : épaisseur</translation>
    </message>
    <message>
        <source>Stile width</source>
        <translation>Bois des montants : largeur</translation>
    </message>
    <message>
        <source>Stiles and head rails of the louver panels.</source>
        <translation>Montants et traverses de tête des panneaux à lames.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>Stock for this kind of part alone, by its name in the vent's stock list: another wood or length of the form and the size of the vent's own. Empty: the vent's.</source>
        <translation>Bois pour cette seule sorte de pièce, par son nom dans la liste des bois du lanterneau : un autre bois ou une autre longueur, de la forme et de la dimension de celui du lanterneau. Vide : celui du lanterneau.</translation>
    </message>
    <message>
        <source>Stock list</source>
        <translation>Liste des bois</translation>
    </message>
    <message>
        <source>Stock list: us, eu, or the path of a list of your own.</source>
        <translation>Liste des bois : us, eu, ou le chemin d'une liste à vous.</translation>
    </message>
    <message>
        <source>Stock that the pieces are cut from.</source>
        <translation>Bois dans lequel les pièces sont coupées.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stopped. The sets that are listed are whole; the others were not written.</source>
        <translation>Arrêté. Les jeux de la liste sont complets ; les autres n'ont pas été écrits.</translation>
    </message>
    <message>
        <source>Survey note</source>
        <translation>Note de relevé</translation>
    </message>
    <message>
        <source>Tail depth</source>
        <translation>Hauteur des abouts</translation>
    </message>
    <message>
        <source>Take a smaller rain angle, a steeper slat or a deeper panel.</source>
        <translation>Prenez un angle de pluie plus petit, une lame plus raide ou un panneau plus profond.</translation>
    </message>
    <message>
        <source>Take a steeper slat or a smaller rain angle.</source>
        <translation>Prenez une lame plus raide ou un angle de pluie plus petit.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>Take away, to look in:</source>
        <translation>Retirer, pour regarder dedans :</translation>
    </message>
    <message>
        <source>Take fewer slats, a steeper slat or a deeper panel.</source>
        <translation>Prenez moins de lames, une lame plus raide ou un panneau plus profond.</translation>
    </message>
    <message>
        <source>Take it away: the list has no stock of this part's form and size.</source>
        <translation>Retirez-le : la liste n'a pas de bois de la forme et de la dimension de cette pièce.</translation>
    </message>
    <message>
        <source>Take that character out.</source>
        <translation>Retirez ce caractère.</translation>
    </message>
    <message>
        <source>Take the cap away under the vent and set its height to 0, or choose wider frame stock.</source>
        <translation>Retirez la faîtière sous le lanterneau et mettez sa hauteur à 0, ou choisissez un bois de cadre plus large.</translation>
    </message>
    <message>
        <source>Take the cap away under the vent and set its height to 0, or make the vent wider.</source>
        <translation>Retirez la faîtière sous le lanterneau et mettez sa hauteur à 0, ou élargissez le lanterneau.</translation>
    </message>
    <message>
        <source>Take the shortest out.</source>
        <translation>Enlevez les plus courtes.</translation>
    </message>
    <message>
        <source>Take what is selected</source>
        <translation>Prendre la sélection</translation>
    </message>
    <message>
        <source>Take {most} or fewer.</source>
        <translation>Prenez {most} ou moins.</translation>
    </message>
    <message>
        <source>Take {needed} slats or more, or a smaller rain angle.</source>
        <translation>Prenez {needed} lames ou plus, ou un angle de pluie plus petit.</translation>
    </message>
    <message>
        <source>The PDF could not be written to {path}: {error}.</source>
        <translation>Le PDF n'a pas pu être écrit dans {path} : {error}.</translation>
    </message>
    <message>
        <source>The PDF is drawn by FreeCAD's Qt (PySide), which this Python does not find: {error}. Run it in FreeCAD, or write the HTML report instead.</source>
        <translation>Le PDF est dessiné par le Qt de FreeCAD (PySide), que ce Python ne trouve pas : {error}. Lancez-le dans FreeCAD, ou écrivez plutôt le rapport HTML.</translation>
    </message>
    <message>
        <source>The PDF needs a Qt application that can draw, and this process has one that cannot. Write it from FreeCAD's window or its console.</source>
        <translation>Le PDF demande une application Qt capable de dessiner, et celle de ce processus ne l'est pas. Écrivez-le depuis la fenêtre ou la console de FreeCAD.</translation>
    </message>
    <message>
        <source>The angle at the ridge and one slope</source>
        <translation>L'angle au faîtage et un versant</translation>
    </message>
    <message>
        <source>The angle between both slopes, at the ridge</source>
        <translation>L'angle entre les deux versants, au faîtage</translation>
    </message>
    <message>
        <source>The answer could not be written to this folder:</source>
        <translation>La réponse n'a pas pu être écrite dans ce dossier :</translation>
    </message>
    <message>
        <source>The answer is written, but this system has no viewer for it:</source>
        <translation>La réponse est écrite, mais ce système n'a pas de visionneuse pour elle :</translation>
    </message>
    <message>
        <source>The clear opening against the louvers.</source>
        <translation>L'ouverture libre comparée aux lames.</translation>
    </message>
    <message>
        <source>The comparison could not be written to this folder:</source>
        <translation>La comparaison n'a pas pu être écrite dans ce dossier :</translation>
    </message>
    <message>
        <source>The comparison is written, but this system has no viewer for it:</source>
        <translation>La comparaison est écrite, mais ce système n'a pas de visionneuse pour elle :</translation>
    </message>
    <message>
        <source>The cut list was not written.</source>
        <translation>La liste de coupe n'a pas été écrite.</translation>
    </message>
    <message>
        <source>The description in the tree that the last recompute wrote.</source>
        <translation>La description dans l'arborescence que le dernier recalcul a écrite.</translation>
    </message>
    <message>
        <source>The edge picked {what}, and has {slope} beside it that looks up: it is no ridge. Pick the ridge, or the slopes on both sides of it.</source>
        <translation>L'arête choisie {what}, et a près d'elle {slope} qui regarde vers le haut : ce n'est pas un faîtage. Choisissez le faîtage, ou les versants de part et d'autre.</translation>
    </message>
    <message>
        <source>The edges picked are not on one ridge. Pick one ridge alone.</source>
        <translation>Les arêtes choisies ne sont pas sur un même faîtage. Choisissez un seul faîtage.</translation>
    </message>
    <message>
        <source>The file cannot be read: {error}.</source>
        <translation>Le fichier ne peut pas être lu : {error}.</translation>
    </message>
    <message>
        <source>The file says {told}, and its parameters make model {fingerprint}: they were changed after the report was written, or another version of Louverwright wrote it. Choose the report as it was written.</source>
        <translation>Le fichier dit {told}, et ses paramètres donnent le modèle {fingerprint} : ils ont été changés après l'écriture du rapport, ou une autre version de Louverwright l'a écrit. Choisissez le rapport tel qu'il a été écrit.</translation>
    </message>
    <message>
        <source>The kind of part, as reports and references call it.</source>
        <translation>La sorte de pièce, telle que les rapports et les renvois la nomment.</translation>
    </message>
    <message>
        <source>The kind's number in its stage's marks.</source>
        <translation>Le numéro de la sorte dans les repères de son étage.</translation>
    </message>
    <message>
        <source>The least of louvers, throat and roof opening.</source>
        <translation>La plus petite section parmi lames, gorge et ouverture du toit.</translation>
    </message>
    <message>
        <source>The list has {count} items, and at most {most} are read. Leave out what you do not use.</source>
        <translation>La liste a {count} articles, et {most} au plus sont lus. Omettez ce que vous n'utilisez pas.</translation>
    </message>
    <message>
        <source>The mark of each piece.</source>
        <translation>Le repère de chaque pièce.</translation>
    </message>
    <message>
        <source>The name is empty. Give the item a name.</source>
        <translation>Le nom est vide. Donnez un nom à l'article.</translation>
    </message>
    <message>
        <source>The name of each piece, in the order of the shape's solids.</source>
        <translation>Le nom de chaque pièce, dans l'ordre des solides de la forme.</translation>
    </message>
    <message>
        <source>The objects that the roof is read from.</source>
        <translation>Les objets sur lesquels le toit est lu.</translation>
    </message>
    <message>
        <source>The opening cuts nothing: there is no roof inside the vent's legs, or it is open there already. Move the vent onto the roof, or delete the opening.</source>
        <translation>L'ouverture ne coupe rien : il n'y a pas de toit entre les pieds du lanterneau, ou il y est déjà ouvert. Déplacez le lanterneau sur le toit, ou supprimez l'ouverture.</translation>
    </message>
    <message>
        <source>The opening of another vent that was cut into the same roof before this one.</source>
        <translation>L'ouverture d'un autre lanterneau, coupée dans le même toit avant celle-ci.</translation>
    </message>
    <message>
        <source>The opening would cut {name}, over {lost:.0f} cm² in plan, and that is refused. Set a greater opening margin, move the vent, or have it left standing.</source>
        <translation>L'ouverture couperait {name}, sur {lost:.0f} cm² en plan, et cela est refusé. Mettez une marge de l'ouverture plus grande, déplacez le lanterneau, ou laissez cela debout.</translation>
    </message>
    <message>
        <source>The opening would leave nothing of the roof, which is smaller than the opening. Pick the whole roof for the vent, or make the vent narrower.</source>
        <translation>L'ouverture ne laisserait rien du toit, qui est plus petit que l'ouverture. Choisissez le toit entier pour le lanterneau, ou faites le lanterneau plus étroit.</translation>
    </message>
    <message>
        <source>The papers could not be written to the folder {folder}: {reason}. Choose another folder.</source>
        <translation>Les documents n'ont pas pu être écrits dans le dossier {folder} : {reason}. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>The papers were not written.</source>
        <translation>Les documents n'ont pas été écrits.</translation>
    </message>
    <message>
        <source>The parts cannot be listed.</source>
        <translation>Les pièces ne peuvent pas être listées.</translation>
    </message>
    <message>
        <source>The report could not be written to this folder:</source>
        <translation>Le rapport n'a pas pu être écrit dans ce dossier :</translation>
    </message>
    <message>
        <source>The report is written, but this system has no viewer for it:</source>
        <translation>Le rapport est écrit, mais ce système n'a pas de visionneuse pour lui :</translation>
    </message>
    <message>
        <source>The report was not written.</source>
        <translation>Le rapport n'a pas été écrit.</translation>
    </message>
    <message>
        <source>The ridge slopes {tilt:.2f}° along its length; up to {level_ridge:g}° counts as level. Set the vent on by hand and enter the drops at its four corners, so that its feet are scribed to the roof.</source>
        <translation>Le faîtage penche de {tilt:.2f}° dans sa longueur ; jusqu'à {level_ridge:g}° il compte pour de niveau. Posez le lanterneau à la main et entrez les chutes à ses quatre angles, pour que ses pieds soient tracés sur le toit.</translation>
    </message>
    <message>
        <source>The roof goes on for more than {depth} under the opening, as a building in one solid does: cut so deep, plumb. Depth takes another.</source>
        <translation>Le toit continue sur plus de {depth} sous l'ouverture, comme un bâtiment fait d'un seul solide : coupée sur cette profondeur, d'aplomb. Depth en prend une autre.</translation>
    </message>
    <message>
        <source>The roof has more than one ridge of {ridge_length:.0f} mm. Pick the ridge, or the slopes on both sides of it.</source>
        <translation>Le toit a plus d'un faîtage de {ridge_length:.0f} mm. Choisissez le faîtage, ou les versants de part et d'autre.</translation>
    </message>
    <message>
        <source>The roof has one slope only, and that is the left one. Choose the left slope.</source>
        <translation>Le toit n'a qu'un versant, et c'est le gauche. Choisissez le versant gauche.</translation>
    </message>
    <message>
        <source>The roof is read again when one of these changes.</source>
        <translation>Le toit est lu de nouveau quand l'un d'eux change.</translation>
    </message>
    <message>
        <source>The roof that is drawn</source>
        <translation>Le toit dessiné</translation>
    </message>
    <message>
        <source>The roof's planes and ridge, by which it is found again.</source>
        <translation>Les plans et le faîtage du toit, auxquels on le retrouve.</translation>
    </message>
    <message>
        <source>The roof, or what it stands in, is gone. Pick the roof again with Edit vent.</source>
        <translation>Le toit, ou ce qui le contient, a disparu. Choisissez le toit de nouveau avec « Modifier le lanterneau ».</translation>
    </message>
    <message>
        <source>The roof, or what it stands in, is gone. Pick the roof again.</source>
        <translation>Le toit, ou ce qui le contient, a disparu. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>The shop drawings were not made.</source>
        <translation>Les dessins d’atelier n’ont pas été faits.</translation>
    </message>
    <message>
        <source>The slope that the vent stands on is not there any more, nor any like it. Pick the roof again.</source>
        <translation>Le versant sur lequel le lanterneau est posé a disparu, et il n'y en a pas de semblable. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>The stage, as reports and references call it.</source>
        <translation>L'étage, tel que les rapports et les renvois le nomment.</translation>
    </message>
    <message>
        <source>The stock list “{name}” cannot be read: {error}. Give us, eu, or the path of a list of your own.</source>
        <translation>La liste des bois « {name} » ne peut pas être lue : {error}. Donnez us, eu, ou le chemin d'une liste à vous.</translation>
    </message>
    <message>
        <source>The survey has no reading of the roof. Give ridge_angle, slope_left, or rise_left and run_left.</source>
        <translation>Le relevé n'a aucune mesure du toit. Donnez ridge_angle, slope_left, ou rise_left et run_left.</translation>
    </message>
    <message>
        <source>The two slopes are {what}, {where}: they meet in no ridge. Pick a slope on each side of the ridge, or one face alone for a vent on one slope or on a flat roof.</source>
        <translation>Les deux versants sont {what}, {where} : ils ne se joignent en aucun faîtage. Choisissez un versant de chaque côté du faîtage, ou une seule face pour un lanterneau sur un versant ou un toit plat.</translation>
    </message>
    <message>
        <source>The two slopes do not meet in a ridge: at least one of them lies beyond the line that their planes meet in. Pick the two slopes of one roof.</source>
        <translation>Les deux versants ne se joignent pas en un faîtage : l'un au moins est au-delà de la ligne où leurs plans se coupent. Choisissez les deux versants d'un même toit.</translation>
    </message>
    <message>
        <source>The two slopes do not reach each other: along the line that their planes meet in, no stretch has an edge of both within {reach:g} mm. Pick the two slopes of one ridge.</source>
        <translation>Les deux versants ne se touchent pas : le long de la ligne où leurs plans se coupent, aucun tronçon n'a une arête des deux à moins de {reach:g} mm. Choisissez les deux versants d'un même faîtage.</translation>
    </message>
    <message>
        <source>The two slopes fall the same way, so that they meet in a break of the slope and not in a ridge. Pick the slopes on both sides of the ridge.</source>
        <translation>Les deux versants descendent du même côté, ils se joignent donc en une brisure et non en un faîtage. Choisissez les versants de part et d'autre du faîtage.</translation>
    </message>
    <message>
        <source>The two slopes fall towards each other: they meet in a valley, and a vent there would dam the water. Pick two slopes that fall away from a ridge.</source>
        <translation>Les deux versants descendent l'un vers l'autre : ils se joignent en une noue, et un lanterneau y retiendrait l'eau. Choisissez deux versants qui descendent d'un faîtage.</translation>
    </message>
    <message>
        <source>The two slopes meet in a line that slopes {tilt:.1f}°: that is a hip or a valley, and a vent needs a level ridge. Pick the slopes on both sides of the ridge.</source>
        <translation>Les deux versants se joignent en une ligne inclinée de {tilt:.1f}° : c'est une arête ou une noue, et un lanterneau demande un faîtage de niveau. Choisissez les versants de part et d'autre du faîtage.</translation>
    </message>
    <message>
        <source>The two slopes that the vent stands on are not there any more, nor any ridge like theirs. Pick the roof again.</source>
        <translation>Les deux versants sur lesquels le lanterneau est posé ont disparu, et il n'y a pas de faîtage comme le leur. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>The vent cannot be taken apart.</source>
        <translation>Le lanterneau ne peut pas être écarté en pièces.</translation>
    </message>
    <message>
        <source>The vent of this opening is gone; the opening keeps its last shape. Choose another vent in the property Vent, or delete the opening, and the roof is shown whole again.</source>
        <translation>Le lanterneau de cette ouverture a disparu ; l'ouverture garde sa dernière forme. Choisissez un autre lanterneau dans la propriété Vent, ou supprimez l'ouverture, et le toit est de nouveau montré entier.</translation>
    </message>
    <message>
        <source>The vent that is drawn.</source>
        <translation>Le lanterneau dessiné.</translation>
    </message>
    <message>
        <source>The vent that the opening is cut for, with all others of its row.</source>
        <translation>Le lanterneau pour lequel l'ouverture est coupée, avec tous les autres de sa rangée.</translation>
    </message>
    <message>
        <source>The vent that the part belongs to.</source>
        <translation>Le lanterneau auquel la pièce appartient.</translation>
    </message>
    <message>
        <source>The vent that the stage belongs to.</source>
        <translation>Le lanterneau auquel l'étage appartient.</translation>
    </message>
    <message>
        <source>The vent that this one is alike to, the first of the row.</source>
        <translation>Le lanterneau auquel celui-ci est semblable, le premier de la rangée.</translation>
    </message>
    <message>
        <source>The vent was not compared.</source>
        <translation>Le lanterneau n'a pas été comparé.</translation>
    </message>
    <message>
        <source>The vent whose cut list this is.</source>
        <translation>Le lanterneau dont c'est la liste de coupe.</translation>
    </message>
    <message>
        <source>The vent's axis would stand {past:.0f} mm past the end of the ridge, which is {total:.0f} mm long. Enter a distance from the {end} that stays on the ridge.</source>
        <translation>L'axe du lanterneau serait à {past:.0f} mm au-delà du bout du faîtage, long de {total:.0f} mm. Entrez une distance ({end}) qui reste sur le faîtage.</translation>
    </message>
    <message>
        <source>The wish that the last recompute found.</source>
        <translation type="vanished">Le souhait trouvé par le dernier recalcul.</translation>
    </message>
    <message>
        <source>They are not the parts of a report.</source>
        <translation>Ce ne sont pas les pièces d'un rapport.</translation>
    </message>
    <message>
        <source>Thickest stock that your saw cuts with its blade upright.</source>
        <translation>Bois le plus épais que votre scie coupe lame d'aplomb.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Thickness of the ridge board under the opening, which is never cut. 0: none. A vent on one slope has none.</source>
        <translation>Épaisseur de la panne faîtière sous l'ouverture, qui n'est jamais coupée. 0 : aucune. Un lanterneau sur un versant n'en a pas.</translation>
    </message>
    <message>
        <source>Thickness of the {stock}, as measured.</source>
        <translation>Épaisseur mesurée ({stock}).</translation>
    </message>
    <message>
        <source>This cannot be printed: {limit}. {cure}</source>
        <translation>Ceci ne peut pas être imprimé : {limit}. {cure}</translation>
    </message>
    <message>
        <source>This is a picture. Vent and document stay as they are, and closing puts all together.</source>
        <translation>Ceci est une image. Lanterneau et document restent tels quels, et à la fermeture tout se rassemble.</translation>
    </message>
    <message>
        <source>This system has no viewer for {path}.</source>
        <translation>Ce système n'a pas de visionneuse pour {path}.</translation>
    </message>
    <message>
        <source>Top of the base above the ridge.</source>
        <translation>Haut de la base au-dessus du faîtage.</translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation>Traverse haute</translation>
    </message>
    <message>
        <source>Total weight</source>
        <translation>Poids total</translation>
    </message>
    <message>
        <source>Trade's rule for the width: inches of vent for each foot of its share of the ridge (1.25 is 104 mm per metre).</source>
        <translation>Règle du métier pour la largeur : pouces de lanterneau par pied de sa part du faîtage (1,25 fait 104 mm par mètre).</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Habillage</translation>
    </message>
    <message>
        <source>Trim and frieze of the louver stage.</source>
        <translation>Habillage et frise de l'étage à lames.</translation>
    </message>
    <message>
        <source>Trim clearance</source>
        <translation>Joint de l'habillage</translation>
    </message>
    <message>
        <source>Trim lap</source>
        <translation>Recouvrement de l'habillage</translation>
    </message>
    <message>
        <source>Trim moisture</source>
        <translation>Bois de l'habillage : humidité</translation>
    </message>
    <message>
        <source>Trim stock</source>
        <translation>Bois de l'habillage</translation>
    </message>
    <message>
        <source>Trim thickness</source>
        <translation>Bois de l'habillage : épaisseur</translation>
    </message>
    <message>
        <source>Trim width</source>
        <translation>Bois de l'habillage : largeur</translation>
    </message>
    <message>
        <source>Turn left and right</source>
        <translation>Échanger gauche et droite</translation>
    </message>
    <message>
        <source>Unit of lengths on the report.</source>
        <translation>Unité des longueurs dans le rapport.</translation>
    </message>
    <message>
        <source>Vent roof</source>
        <translation>Toit du lanterneau</translation>
    </message>
    <message>
        <source>Vents</source>
        <translation>Lanterneaux</translation>
    </message>
    <message>
        <source>Vents along the ridge</source>
        <translation>Lanterneaux le long du faîtage</translation>
    </message>
    <message>
        <source>Vents is 1, so the vent stands alone. Set Vents to how many share the ridge, and RidgeLength to the ridge's unbroken length; then run this command again.</source>
        <translation>Vents vaut 1, le lanterneau est donc seul. Mettez dans Vents le nombre de ceux qui se partagent le faîtage, et dans RidgeLength la longueur de faîtage continu ; puis lancez de nouveau cette commande.</translation>
    </message>
    <message>
        <source>Verge</source>
        <translation>Débord de rive</translation>
    </message>
    <message>
        <source>Weight of all vents on the ridge together.</source>
        <translation>Poids de tous les lanterneaux du faîtage ensemble.</translation>
    </message>
    <message>
        <source>Weight of the base.</source>
        <translation>Poids de la base.</translation>
    </message>
    <message>
        <source>Weight of the louver stage.</source>
        <translation>Poids de l'étage à lames.</translation>
    </message>
    <message>
        <source>Weight of the parts that are left out, as drawn; no other weight has it.</source>
        <translation>Poids des pièces omises, telles que dessinées ; il n'est dans aucun autre poids.</translation>
    </message>
    <message>
        <source>Weight of the roof stage, without its covering.</source>
        <translation>Poids de l'étage du toit, sans sa couverture.</translation>
    </message>
    <message>
        <source>Weight of the vent, without covering, flashing and paint.</source>
        <translation>Poids du lanterneau, sans couverture, solins ni peinture.</translation>
    </message>
    <message>
        <source>What closes the gables: cladding, or slats as in the panels.</source>
        <translation>Ce qui ferme les pignons : un bardage, ou des lames comme dans les panneaux.</translation>
    </message>
    <message>
        <source>What each person is to lift at most, in kg.</source>
        <translation>Ce que chaque personne doit lever au plus, en kg.</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Ce qui en découle</translation>
    </message>
    <message>
        <source>What the last recompute found.</source>
        <translation>Ce que le dernier recalcul a trouvé.</translation>
    </message>
    <message>
        <source>What the parts' colours tell apart: the stock that they are cut from, or their kinds. A part that you have coloured yourself keeps its colour.</source>
        <translation>Ce que distinguent les couleurs des pièces : le bois dans lequel elles sont coupées, ou leurs sortes. Une pièce que vous avez colorée vous-même garde sa couleur.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, left slope.</source>
        <translation>Ce que l'erreur de pente ouvre au pied, versant gauche.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, right slope.</source>
        <translation>Ce que l'erreur de pente ouvre au pied, versant droit.</translation>
    </message>
    <message>
        <source>What the shape was made from.</source>
        <translation>Ce dont la forme a été faite.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot or a piece: 2x4: 2.10/m; 1x6: 0.95/ft; plywood 1/2: 38 each. Gives a cost sheet.</source>
        <translation type="vanished">Ce que demande le négociant, dans une seule monnaie, sous la forme bois et prix au mètre, au pied ou à la pièce : 2x4: 2.10/m; 1x6: 0.95/ft; plywood 1/2: 38 each. Donne un relevé des coûts.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot, a piece or a length: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Gives a cost sheet; stock with a price for every length is bought at the least cost.</source>
        <translation>Ce que demande le négoce, dans une seule monnaie, par bois et prix du mètre, du pied, de la pièce ou d'une longueur : 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Donne un état des coûts ; le bois dont chaque longueur a un prix est acheté au moindre coût.</translation>
    </message>
    <message>
        <source>What was hidden when the opening was made.</source>
        <translation>Ce qui a été masqué quand l'ouverture a été faite.</translation>
    </message>
    <message>
        <source>What was picked has been deleted. Pick the roof again.</source>
        <translation>Ce qui était choisi a été supprimé. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>What you cut off each end of a new stick, with the saw cut, to have it sound and square.</source>
        <translation>Ce que vous coupez à chaque bout d'une barre neuve, trait de scie compris, pour qu'il soit sain et d'équerre.</translation>
    </message>
    <message>
        <source>Where AlongRidge counts from: the middle of the ridge (towards the front), its back end, or its front end, which the vent's +X axis looks at.</source>
        <translation>D'où compte AlongRidge : du milieu du faîtage (vers l'avant), de son bout arrière, ou de son bout avant, que regarde l'axe +X du lanterneau.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis along the ridge.</source>
        <translation>Où les chutes sont lues : depuis l'axe du lanterneau, le long du faîtage.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis square to the ridge.</source>
        <translation>Où les chutes sont lues : depuis l'axe du lanterneau, d'équerre au faîtage.</translation>
    </message>
    <message>
        <source>Where each piece's board frame stands in the vent.</source>
        <translation>Où se tient dans le lanterneau le repère de la planche de chaque pièce.</translation>
    </message>
    <message>
        <source>Where the picture was put, to tell whether you moved it.</source>
        <translation>Où l’image a été posée, pour savoir si vous l’avez déplacée.</translation>
    </message>
    <message>
        <source>Where the vent stood when it last took its seat.</source>
        <translation>Où était le lanterneau quand il a pris place pour la dernière fois.</translation>
    </message>
    <message>
        <source>Whether a side or a corner of the plan looks along the ridge.</source>
        <translation>Si c'est un côté ou un angle du plan qui regarde le long du faîtage.</translation>
    </message>
    <message>
        <source>Whether the ridge board and the boards of RidgeBoards are left standing in the opening, or an opening that would cut one is refused.</source>
        <translation>Si la panne faîtière et les bois de RidgeBoards restent debout dans l'ouverture, ou si une ouverture qui en couperait un est refusée.</translation>
    </message>
    <message>
        <source>Whether the ridge of a gable roof runs along the barn's or across it.</source>
        <translation>Si le faîtage d'un toit à pignons court le long de celui de la grange ou en travers.</translation>
    </message>
    <message>
        <source>Whether the vent stands astride the ridge, or as a curb wholly on the left slope (a flat roof is a slope of 0°); then heights count from the roof under the vent's axis.</source>
        <translation>Si le lanterneau est à cheval sur le faîtage, ou comme une costière tout entier sur le versant gauche (un toit plat est un versant de 0°) ; les hauteurs comptent alors depuis le toit sous l'axe du lanterneau.</translation>
    </message>
    <message>
        <source>Which of the sheet's pictures this is.</source>
        <translation>Quelle image de la feuille c’est.</translation>
    </message>
    <message>
        <source>Which of the three is the least.</source>
        <translation>Laquelle des trois est la plus petite.</translation>
    </message>
    <message>
        <source>Which of the vent's sheets this is.</source>
        <translation>Quelle feuille du lanterneau c’est.</translation>
    </message>
    <message>
        <source>Which vent of the row this is, counted from the ridge's −X end.</source>
        <translation>Le rang de ce lanterneau dans la rangée, compté depuis le bout −X du faîtage.</translation>
    </message>
    <message>
        <source>Widest clear distance between rafters that the roof sheathing may bridge.</source>
        <translation>Plus grande distance libre entre chevrons que le voligeage peut franchir.</translation>
    </message>
    <message>
        <source>Widest spacing</source>
        <translation>Plus grand écartement</translation>
    </message>
    <message>
        <source>Widest spacing of the slats, plumb; it leads where no number of slats is given.</source>
        <translation>Plus grand écartement des lames, d'aplomb ; il décide quand aucun nombre de lames n'est donné.</translation>
    </message>
    <message>
        <source>Widest stock that your saw crosscuts.</source>
        <translation>Bois le plus large que votre scie tronçonne.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Width of the barn's ridge cap, level, both slopes together.</source>
        <translation>Largeur de la faîtière de la grange, de niveau, les deux versants ensemble.</translation>
    </message>
    <message>
        <source>Width of the building across the ridge; with the ridge length it gives the area of an open ridge, 2 in for each 10 ft of width.</source>
        <translation>Largeur du bâtiment en travers du faîtage ; avec la longueur du faîtage elle donne la section d'un faîtage ouvert, 2 pouces par 10 pieds de largeur.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding.</source>
        <translation>Largeur du lanterneau hors bardage.</translation>
    </message>
    <message>
        <source>Width of the vent's roof over the fascia; of a rectangle's the smaller.</source>
        <translation>Largeur du toit du lanterneau hors bandeaux ; d'un rectangle, la plus petite.</translation>
    </message>
    <message>
        <source>Width of the {stock}, as measured.</source>
        <translation>Largeur mesurée ({stock}).</translation>
    </message>
    <message>
        <source>Width of your saw's cut.</source>
        <translation>Largeur du trait de votre scie.</translation>
    </message>
    <message>
        <source>Width rule</source>
        <translation>Règle de largeur</translation>
    </message>
    <message>
        <source>Width that a corner board shows on each face.</source>
        <translation>Largeur qu'une planche d'angle montre sur chaque face.</translation>
    </message>
    <message>
        <source>Width that a corner post shows on each face.</source>
        <translation>Largeur qu'un poteau d'angle montre sur chaque face.</translation>
    </message>
    <message>
        <source>Wind speed</source>
        <translation>Vitesse du vent</translation>
    </message>
    <message>
        <source>With several vents: from each end of the unbroken ridge to the axis of the nearest vent; between these the vents are evenly spaced. One vent stands in the middle.</source>
        <translation>Avec plusieurs lanterneaux : de chaque bout du faîtage continu à l'axe du lanterneau le plus proche ; entre eux les lanterneaux sont régulièrement espacés. Un seul se tient au milieu.</translation>
    </message>
    <message>
        <source>Wood left on the legs' feet, plumb, to scribe them to a twisted roof or a ridge that sags.</source>
        <translation>Bois laissé au bas des pieds, d'aplomb, pour les tracer sur un toit gauche ou un faîtage qui fléchit.</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation>Écrivez un nombre.</translation>
    </message>
    <message>
        <source>Write the vent's cut list into a spreadsheet in the document, or bring it up to date; what you have written right of it stays with its cut.</source>
        <translation>Écrire la liste de coupe du lanterneau dans une feuille de calcul du document, ou la mettre à jour ; ce que vous avez écrit à sa droite reste avec sa coupe.</translation>
    </message>
    <message>
        <source>Write the vent's cut list, saw settings and drawings to a folder: HTML, PDF, CSV and JSON.</source>
        <translation>Écrire dans un dossier la liste de coupe, les réglages de scie et les dessins du lanterneau : HTML, PDF, CSV et JSON.</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation>Écrivez oui ou non (yes, no).</translation>
    </message>
    <message>
        <source>a common at mid-side stands where the mast's bearer lies</source>
        <translation>un chevron se trouve au milieu du côté, là où passe le porte-mât</translation>
    </message>
    <message>
        <source>a common must stand at mid-side of a rectangle's short sides, to meet the ridge's end</source>
        <translation>il faut un chevron au milieu des petits côtés d'un rectangle, à la rencontre du bout du faîtage</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>un compte</translation>
    </message>
    <message>
        <source>a count is a whole number, 0 or more</source>
        <translation>un compte est un nombre entier, 0 ou plus</translation>
    </message>
    <message>
        <source>a fraction without a unit may mean inches or {unit}, so write the unit</source>
        <translation>une fraction sans unité peut être en pouces ou en {unit}, écrivez donc l'unité</translation>
    </message>
    <message>
        <source>a leg has only {leg} below its rail and needs {least_leg}</source>
        <translation>un pied n'a que {leg} sous sa traverse et demande {least_leg}</translation>
    </message>
    <message>
        <source>a leg would stand {free} below its lowest rail, and {frame_t} thick it may stand {most}</source>
        <translation>un pied serait libre sur {free} sous sa traverse la plus basse, et épais de {frame_t} il peut l'être sur {most}</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>une longueur</translation>
    </message>
    <message>
        <source>a mark, such as B1L, or words of a part, its stock or size</source>
        <translation>un repère, tel que B1L, ou des mots d'une pièce, de son bois ou de sa taille</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a part that holds other objects</source>
        <translation>une pièce Part qui contient d'autres objets</translation>
    </message>
    <message>
        <source>a plan has 4, 6 or 8 sides</source>
        <translation>un plan a 4, 6 ou 8 côtés</translation>
    </message>
    <message>
        <source>a post {has} thick must keep {mast_wood} of wood around the bore</source>
        <translation>un poinçon épais de {has} doit garder {mast_wood} de bois autour du perçage</translation>
    </message>
    <message>
        <source>a relief over so low a cap cannot be sawn; it is {least_cap} deep at least</source>
        <translation>un dégagement au-dessus d'une faîtière si basse ne peut être scié ; il a au moins {least_cap} de profondeur</translation>
    </message>
    <message>
        <source>a sole on the eave side keeps only {left} of its width on so steep a roof and needs 20 mm</source>
        <translation>une semelle côté égout ne garde que {left} de sa largeur sur un toit si raide et demande 20 mm</translation>
    </message>
    <message>
        <source>a stile {stile_t} thick must keep {dado_floor} behind it</source>
        <translation>un montant épais de {stile_t} doit garder {dado_floor} derrière elle</translation>
    </message>
    <message>
        <source>a text in it has half of a character (\ud800 to \udfff); take that out</source>
        <translation>un texte y a un demi-caractère (\ud800 à \udfff) ; retirez-le</translation>
    </message>
    <message>
        <source>a weight</source>
        <translation>un poids</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>across</source>
        <translation>en travers</translation>
    </message>
    <message>
        <source>along</source>
        <translation>le long</translation>
    </message>
    <message>
        <source>along the eave</source>
        <translation>le long de l'égout</translation>
    </message>
    <message>
        <source>always</source>
        <translation>toujours</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un angle</translation>
    </message>
    <message>
        <source>an answer</source>
        <translation>une réponse</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>une surface</translation>
    </message>
    <message>
        <source>an endless number</source>
        <translation>un nombre sans fin</translation>
    </message>
    <message>
        <source>an object without a shape</source>
        <translation>un objet sans forme</translation>
    </message>
    <message>
        <source>another</source>
        <translation>un autre bois</translation>
    </message>
    <message>
        <source>as drawn:</source>
        <translation>dessiné :</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>comme à gauche</translation>
    </message>
    <message>
        <source>as the long faces</source>
        <translation>comme les longues faces</translation>
    </message>
    <message>
        <source>as the overhang: the break lies over the plate's edge</source>
        <translation>comme le débord : la brisure est au-dessus du bord de la sablière</translation>
    </message>
    <message>
        <source>as the stock list says</source>
        <translation>selon la liste des bois</translation>
    </message>
    <message>
        <source>as the width: a square</source>
        <translation>comme la largeur : un carré</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatique</translation>
    </message>
    <message>
        <source>automatic: {value}</source>
        <translation>auto : {value}</translation>
    </message>
    <message>
        <source>back</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>barge boards must be {need} wide to cover the ends of ridge and eaves, and the stock is {width}</source>
        <translation>les planches de rive doivent être larges de {need} pour couvrir les bouts du faîtage et des égouts, et le bois fait {width}</translation>
    </message>
    <message>
        <source>batten stock</source>
        <translation>bois des liteaux</translation>
    </message>
    <message>
        <source>batten thickness</source>
        <translation>épaisseur (bois des liteaux)</translation>
    </message>
    <message>
        <source>batten width</source>
        <translation>largeur (bois des liteaux)</translation>
    </message>
    <message>
        <source>battens {batten_w} wide would meet behind the screen; {most} is the widest</source>
        <translation>des liteaux larges de {batten_w} se toucheraient derrière le grillage ; {most} est le plus large</translation>
    </message>
    <message>
        <source>board</source>
        <translation>planche</translation>
    </message>
    <message>
        <source>boarded</source>
        <translation>bardé</translation>
    </message>
    <message>
        <source>boards</source>
        <translation>planches</translation>
    </message>
    <message>
        <source>both level</source>
        <translation>tous deux de niveau</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>bout à bout</translation>
    </message>
    <message>
        <source>by the floor or by the building's width, if either is given</source>
        <translation>d'après le sol ou la largeur du bâtiment, si l'un est donné</translation>
    </message>
    <message>
        <source>by the number of slats</source>
        <translation>d'après le nombre de lames</translation>
    </message>
    <message>
        <source>by the width rule from the ridge length</source>
        <translation>d'après la règle de largeur et la longueur du faîtage</translation>
    </message>
    <message>
        <source>by the width rule from the ridge; it must be between {low} and {high}</source>
        <translation>d'après la règle de largeur et le faîtage ; elle doit être entre {low} et {high}</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centimètres</translation>
    </message>
    <message>
        <source>cladding stock</source>
        <translation>bois du bardage</translation>
    </message>
    <message>
        <source>cladding thickness</source>
        <translation>épaisseur (bois du bardage)</translation>
    </message>
    <message>
        <source>cladding width</source>
        <translation>largeur (bois du bardage)</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>angle</translation>
    </message>
    <message>
        <source>corner board stock</source>
        <translation>bois des planches d'angle</translation>
    </message>
    <message>
        <source>corner board thickness</source>
        <translation>épaisseur (bois des planches d'angle)</translation>
    </message>
    <message>
        <source>corner board width</source>
        <translation>largeur (bois des planches d'angle)</translation>
    </message>
    <message>
        <source>dados on both faces leave less than {dado_floor} of the mullion</source>
        <translation>des rainures sur les deux faces laissent moins de {dado_floor} du meneau</translation>
    </message>
    <message>
        <source>diagonal side</source>
        <translation>côté oblique</translation>
    </message>
    <message>
        <source>diagonal side {along} {across} ({axis})</source>
        <translation>côté oblique {along} {across} ({axis})</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>bois équarri</translation>
    </message>
    <message>
        <source>drops are read from a ridge, and the vent sits on one slope</source>
        <translation>les chutes se lisent depuis un faîtage, et le lanterneau est posé sur un versant</translation>
    </message>
    <message>
        <source>eave side</source>
        <translation>côté égout</translation>
    </message>
    <message>
        <source>every part of the vent is left out</source>
        <translation>toutes les pièces du lanterneau sont omises</translation>
    </message>
    <message>
        <source>fascia stock</source>
        <translation>bois des bandeaux</translation>
    </message>
    <message>
        <source>fascia thickness</source>
        <translation>épaisseur (bois des bandeaux)</translation>
    </message>
    <message>
        <source>fascia width</source>
        <translation>largeur (bois des bandeaux)</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pieds</translation>
    </message>
    <message>
        <source>flared hip</source>
        <translation>à croupes et coyau</translation>
    </message>
    <message>
        <source>frame stock</source>
        <translation>bois de cadre</translation>
    </message>
    <message>
        <source>frame thickness</source>
        <translation>épaisseur (bois de cadre)</translation>
    </message>
    <message>
        <source>frame width</source>
        <translation>largeur (bois de cadre)</translation>
    </message>
    <message>
        <source>from the faces' pitch</source>
        <translation>d'après la pente des faces</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>ft-in</source>
        <translation>ft-in</translation>
    </message>
    <message>
        <source>full-size templates to print and glue, and each as a DXF file</source>
        <translation type="vanished">gabarits grandeur nature à imprimer et à coller, chacun aussi en fichier DXF</translation>
    </message>
    <message>
        <source>full-size templates: sheets to print and glue together, and each as a DXF file</source>
        <translation>gabarits grandeur nature : feuilles à imprimer et à coller ensemble, et chacun en fichier DXF</translation>
    </message>
    <message>
        <source>gable</source>
        <translation>à pignons</translation>
    </message>
    <message>
        <source>gable side</source>
        <translation>côté pignon</translation>
    </message>
    <message>
        <source>gable side +X{front}</source>
        <translation>côté pignon +X{front}</translation>
    </message>
    <message>
        <source>gable side −X{back}</source>
        <translation>côté pignon −X{back}</translation>
    </message>
    <message>
        <source>half a vent's share of the ridge</source>
        <translation>la demi-part de faîtage d'un lanterneau</translation>
    </message>
    <message>
        <source>half the faces' pitch</source>
        <translation>la moitié de la pente des faces</translation>
    </message>
    <message>
        <source>half the overhang</source>
        <translation>la moitié du débord</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>à croupes</translation>
    </message>
    <message>
        <source>hips</source>
        <translation>des arêtiers</translation>
    </message>
    <message>
        <source>hips and commons</source>
        <translation>des arêtiers et des chevrons</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in one plane</source>
        <translation>dans un même plan</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>inches are halved, and halved again</source>
        <translation>les pouces se divisent en deux, et encore en deux</translation>
    </message>
    <message>
        <source>inside the frame it leaves {hold} for the gussets of its corners, and they need {least_bearing}</source>
        <translation>à l'intérieur du cadre il laisse {hold} pour les goussets de ses angles, et ils demandent {least_bearing}</translation>
    </message>
    <message>
        <source>is level, as an eave is</source>
        <translation>est de niveau, comme un égout</translation>
    </message>
    <message>
        <source>it bears on {bearing} of the frame and needs {least_bearing}</source>
        <translation>il porte sur {bearing} du cadre et demande {least_bearing}</translation>
    </message>
    <message>
        <source>it can be read in two ways</source>
        <translation>cela peut se lire de deux façons</translation>
    </message>
    <message>
        <source>it can have three decimals at most</source>
        <translation>il peut avoir trois décimales au plus</translation>
    </message>
    <message>
        <source>it cannot be wider than its stock, {wide}</source>
        <translation>elle ne peut être plus large que son bois, {wide}</translation>
    </message>
    <message>
        <source>it cannot be wider than the frame stock, {frame_w}</source>
        <translation>elle ne peut être plus large que le bois de cadre, {frame_w}</translation>
    </message>
    <message>
        <source>it has a character that cannot be printed, U+{number}</source>
        <translation>il a un caractère qui ne peut pas être imprimé, U+{number}</translation>
    </message>
    <message>
        <source>it has two prices</source>
        <translation>il a deux prix</translation>
    </message>
    <message>
        <source>it has {count} characters, and at most {most} are printed</source>
        <translation>il a {count} caractères, et {most} au plus sont imprimés</translation>
    </message>
    <message>
        <source>it is a pipe or a device; give a file</source>
        <translation>c'est un tube ou un périphérique ; donnez un fichier</translation>
    </message>
    <message>
        <source>it is a {form}, and the cladding is to be {cladding}</source>
        <translation>sa forme est {form}, et le bardage choisi est {cladding}</translation>
    </message>
    <message>
        <source>it is a {form}, and the use needs a {forms}</source>
        <translation>sa forme est {form}, et l'emploi demande {forms}</translation>
    </message>
    <message>
        <source>it is a {form}, {section}, and the vent is laid out from “{usual}”, a {usual_form}, {usual_section}</source>
        <translation>sa forme est {form}, {section}, et le lanterneau est disposé d'après « {usual} », de forme {usual_form}, {usual_section}</translation>
    </message>
    <message>
        <source>it is larger than {most} MB</source>
        <translation>il dépasse {most} Mo</translation>
    </message>
    <message>
        <source>it is nested more than {most} deep</source>
        <translation>il est imbriqué sur plus de {most} niveaux</translation>
    </message>
    <message>
        <source>it is no item of the stock list</source>
        <translation>il n'est pas dans la liste de bois</translation>
    </message>
    <message>
        <source>it is no offcut's length</source>
        <translation>ce n'est pas une longueur de chute</translation>
    </message>
    <message>
        <source>it is no stick of the stock list</source>
        <translation>ce n'est pas une barre de la liste de bois</translation>
    </message>
    <message>
        <source>it is no text</source>
        <translation>ce n'est pas un texte</translation>
    </message>
    <message>
        <source>it is not a length</source>
        <translation>ce n'est pas une longueur</translation>
    </message>
    <message>
        <source>it is not a price</source>
        <translation>ce n'est pas un prix</translation>
    </message>
    <message>
        <source>it is not a stock with its lengths</source>
        <translation>ce n'est pas un bois avec ses longueurs</translation>
    </message>
    <message>
        <source>it is not a stock with its price</source>
        <translation>ce n'est pas un bois avec son prix</translation>
    </message>
    <message>
        <source>it is not measured, and the drops at the other corners mean nothing without it</source>
        <translation>elle n'est pas mesurée, et les chutes aux autres angles ne disent rien sans elle</translation>
    </message>
    <message>
        <source>it is not written in UTF-8; save it in that encoding</source>
        <translation>il n'est pas écrit en UTF-8 ; enregistrez-le dans ce codage</translation>
    </message>
    <message>
        <source>it is {count} characters long and at most {most} are read</source>
        <translation>il est long de {count} caractères et {most} au plus sont lus</translation>
    </message>
    <message>
        <source>it leaves a ridge of {length}, and two commons side by side need {least}</source>
        <translation>elle laisse un faîtage de {length}, et deux chevrons côte à côte demandent {least}</translation>
    </message>
    <message>
        <source>it leaves {room} under the first slat's dado, and {dado_wood} is the least</source>
        <translation>elle laisse {room} sous la rainure de la première lame, et {dado_wood} est le minimum</translation>
    </message>
    <message>
        <source>it lies on another machine, and nothing is fetched from a network; copy it beside your file</source>
        <translation>il se trouve sur une autre machine, et rien n'est pris sur un réseau ; copiez-le à côté de votre fichier</translation>
    </message>
    <message>
        <source>it makes a slope of {pitch:.1f}°, and a slope must be less than {steepest:g}°</source>
        <translation>elle donne un versant de {pitch:.1f}°, et un versant doit avoir moins de {steepest:g}°</translation>
    </message>
    <message>
        <source>it may not be less than 0</source>
        <translation>la valeur ne peut être inférieure à 0</translation>
    </message>
    <message>
        <source>it must be at least {low} and {bound} {high}{zero}</source>
        <translation>la valeur doit être d'au moins {low} et {bound} {high}{zero}</translation>
    </message>
    <message>
        <source>it must be one of {choices}</source>
        <translation>la valeur doit être l'une de : {choices}</translation>
    </message>
    <message>
        <source>it must be text</source>
        <translation>il faut un texte</translation>
    </message>
    <message>
        <source>it must be yes or no</source>
        <translation>il faut oui ou non</translation>
    </message>
    <message>
        <source>it must be {kind}</source>
        <translation>il faut {kind}</translation>
    </message>
    <message>
        <source>it must be {words}</source>
        <translation>il faut {words}</translation>
    </message>
    <message>
        <source>it must be {words}, and FreeCAD keeps the unit of the expression that was there before</source>
        <translation>il faut {words}, et FreeCAD garde l'unité de l'expression qui était là avant</translation>
    </message>
    <message>
        <source>it must lie between the soles and the top rail, {top} to {rail_under}</source>
        <translation>elle doit être entre les semelles et la traverse haute, de {top} à {rail_under}</translation>
    </message>
    <message>
        <source>it reaches the middle of the ridge, {ridge} from each end, and {count} vents stand between</source>
        <translation>elle atteint le milieu du faîtage, à {ridge} de chaque bout, et {count} lanterneaux se tiennent entre</translation>
    </message>
    <message>
        <source>it would cover the stile, {stile_t} thick, and close the louvers</source>
        <translation>il couvrirait le montant, épais de {stile_t}, et fermerait les lames</translation>
    </message>
    <message>
        <source>its expression has no value ({reason})</source>
        <translation>son expression n'a pas de valeur ({reason})</translation>
    </message>
    <message>
        <source>its roof's ridge would be {length} long, and two commons side by side need {least}</source>
        <translation>le faîtage de son toit serait long de {length}, et deux chevrons côte à côte demandent {least}</translation>
    </message>
    <message>
        <source>its step is cut from frame stock {frame_w} × {frame_t}</source>
        <translation>son emplanture est coupée dans un bois de cadre de {frame_w} × {frame_t}</translation>
    </message>
    <message>
        <source>its {count} offcuts are more than {most}</source>
        <translation>ses {count} chutes dépassent {most}</translation>
    </message>
    <message>
        <source>king post stock</source>
        <translation>bois du poinçon</translation>
    </message>
    <message>
        <source>king post thickness</source>
        <translation>épaisseur (bois du poinçon)</translation>
    </message>
    <message>
        <source>king post width</source>
        <translation>largeur (bois du poinçon)</translation>
    </message>
    <message>
        <source>labels to cut out, one a piece: mark, name, stage, hand, face, up, edge to the gauge</source>
        <translation>étiquettes à découper, une par pièce : repère, nom, étage, main, face, haut, chant au guide</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>left eave side (+Y)</source>
        <translation>côté égout gauche (+Y)</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omis</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>de moins de</translation>
    </message>
    <message>
        <source>level</source>
        <translation>horizontal</translation>
    </message>
    <message>
        <source>long</source>
        <translation>en longueur</translation>
    </message>
    <message>
        <source>louvered</source>
        <translation>à lames</translation>
    </message>
    <message>
        <source>louvers</source>
        <translation>lames</translation>
    </message>
    <message>
        <source>marks with commas, such as B1L, L7R</source>
        <translation>repères séparés par des virgules, tels que B1L, L7R</translation>
    </message>
    <message>
        <source>mesh</source>
        <translation>toile</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>mètres</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>milieu</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>millimètres</translation>
    </message>
    <message>
        <source>minutes and seconds must be less than 60</source>
        <translation>minutes et secondes doivent être inférieures à 60</translation>
    </message>
    <message>
        <source>mitred</source>
        <translation>d'onglet</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>neighbouring panels would touch inside the corner beyond {most} (post face less screen and batten)</source>
        <translation>des panneaux voisins se toucheraient dans l'angle au-delà de {most} (face de poteau moins grillage et liteau)</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>no mast</source>
        <translation>pas de mât</translation>
    </message>
    <message>
        <source>no ridge length is given to size the vent by</source>
        <translation>aucune longueur de faîtage n'est donnée pour dimensionner le lanterneau</translation>
    </message>
    <message>
        <source>no second rail</source>
        <translation>pas de seconde traverse</translation>
    </message>
    <message>
        <source>no slope</source>
        <translation>aucun versant</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>non donné</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>on your left, at the vent's +X end, when you look along +X</source>
        <translation>à votre gauche, au bout +X du lanterneau, quand vous regardez le long de +X</translation>
    </message>
    <message>
        <source>on your left, at the vent's −X end, when you look along +X</source>
        <translation>à votre gauche, au bout −X du lanterneau, quand vous regardez le long de +X</translation>
    </message>
    <message>
        <source>on your right, at the vent's +X end, when you look along +X</source>
        <translation>à votre droite, au bout +X du lanterneau, quand vous regardez le long de +X</translation>
    </message>
    <message>
        <source>on your right, at the vent's −X end, when you look along +X</source>
        <translation>à votre droite, au bout −X du lanterneau, quand vous regardez le long de +X</translation>
    </message>
    <message>
        <source>one slope</source>
        <translation>un versant</translation>
    </message>
    <message>
        <source>only a plan of 4 sides can be a rectangle, and this has {sides}</source>
        <translation>seul un plan à 4 côtés peut être un rectangle, et celui-ci en a {sides}</translation>
    </message>
    <message>
        <source>only a plan of 4 sides can have gables, and this has {sides}</source>
        <translation>seul un plan à 4 côtés peut avoir des pignons, et celui-ci en a {sides}</translation>
    </message>
    <message>
        <source>only the hip roof of a rectangle has end faces</source>
        <translation>seul le toit à croupes d'un rectangle a des croupes distinctes</translation>
    </message>
    <message>
        <source>parallel, at {pitch:.1f}°</source>
        <translation>parallèles, à {pitch:.1f}°</translation>
    </message>
    <message>
        <source>plate stock</source>
        <translation>bois de sablière</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>épaisseur (bois de sablière)</translation>
    </message>
    <message>
        <source>plate width</source>
        <translation>largeur (bois de sablière)</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>d'aplomb</translation>
    </message>
    <message>
        <source>post</source>
        <translation>bois carré</translation>
    </message>
    <message>
        <source>posts and stiles leave {clear} clear between them and must leave {least_clear}</source>
        <translation>poteaux et montants laissent {clear} de libre entre eux et doivent laisser {least_clear}</translation>
    </message>
    <message>
        <source>rafter stock</source>
        <translation>bois des chevrons</translation>
    </message>
    <message>
        <source>rafter thickness</source>
        <translation>épaisseur (bois des chevrons)</translation>
    </message>
    <message>
        <source>rafter width</source>
        <translation>largeur (bois des chevrons)</translation>
    </message>
    <message>
        <source>rain rising inward at {rain_angle:g}° passes between the slats</source>
        <translation>la pluie qui monte vers l'intérieur à {rain_angle:g}° passe entre les lames</translation>
    </message>
    <message>
        <source>raking</source>
        <translation>rampant</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>faîtage</translation>
    </message>
    <message>
        <source>ridge stock</source>
        <translation>bois de faîtage</translation>
    </message>
    <message>
        <source>ridge thickness</source>
        <translation>épaisseur (bois de faîtage)</translation>
    </message>
    <message>
        <source>ridge width</source>
        <translation>largeur (bois de faîtage)</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>right eave side (−Y)</source>
        <translation>côté égout droit (−Y)</translation>
    </message>
    <message>
        <source>ring stock</source>
        <translation>bois du larmier</translation>
    </message>
    <message>
        <source>ring thickness</source>
        <translation>épaisseur (bois du larmier)</translation>
    </message>
    <message>
        <source>ring width</source>
        <translation>largeur (bois du larmier)</translation>
    </message>
    <message>
        <source>ripped to {width}</source>
        <translation>refendu à {width}</translation>
    </message>
    <message>
        <source>roof opening</source>
        <translation>ouverture du toit</translation>
    </message>
    <message>
        <source>sawn to both pitches the rafters keep {rafter_d} of their depth above the break and must keep {least_rafter}</source>
        <translation>sciés aux deux pentes, les chevrons gardent {rafter_d} de leur hauteur au-dessus de la brisure et doivent garder {least_rafter}</translation>
    </message>
    <message>
        <source>screen stock</source>
        <translation>toile du grillage</translation>
    </message>
    <message>
        <source>screen thickness</source>
        <translation>épaisseur (toile du grillage)</translation>
    </message>
    <message>
        <source>sheathing stock</source>
        <translation>panneau du voligeage</translation>
    </message>
    <message>
        <source>sheathing thickness</source>
        <translation>épaisseur (panneau du voligeage)</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>panneau</translation>
    </message>
    <message>
        <source>sheet covering: side pans instead of steps</source>
        <translation>couverture en tôle : bandes latérales au lieu de gradins</translation>
    </message>
    <message>
        <source>shop drawings: general arrangement, a sheet a stage, sheets of parts</source>
        <translation>dessins d’atelier : ensemble, une feuille par étage, feuilles des pièces</translation>
    </message>
    <message>
        <source>side</source>
        <translation>côté</translation>
    </message>
    <message>
        <source>slat stock</source>
        <translation>bois des lames</translation>
    </message>
    <message>
        <source>slat thickness</source>
        <translation>épaisseur (bois des lames)</translation>
    </message>
    <message>
        <source>slat width</source>
        <translation>largeur (bois des lames)</translation>
    </message>
    <message>
        <source>slats need a blank {blank} wide and it is {width}</source>
        <translation>les lames demandent une ébauche large de {blank} et le bois fait {width}</translation>
    </message>
    <message>
        <source>slopes {tilt:.1f}°, as a verge does</source>
        <translation>est inclinée de {tilt:.1f}°, comme une rive</translation>
    </message>
    <message>
        <source>so that no rafter is notched deeper than a third</source>
        <translation>pour qu'aucun chevron ne soit entaillé de plus d'un tiers</translation>
    </message>
    <message>
        <source>soffit stock</source>
        <translation>bois de la sous-face</translation>
    </message>
    <message>
        <source>soffit thickness</source>
        <translation>épaisseur (bois de la sous-face)</translation>
    </message>
    <message>
        <source>soffit width</source>
        <translation>largeur (bois de la sous-face)</translation>
    </message>
    <message>
        <source>square</source>
        <translation>d'équerre</translation>
    </message>
    <message>
        <source>stile stock</source>
        <translation>bois des montants</translation>
    </message>
    <message>
        <source>stile thickness</source>
        <translation>épaisseur (bois des montants)</translation>
    </message>
    <message>
        <source>stile width</source>
        <translation>largeur (bois des montants)</translation>
    </message>
    <message>
        <source>stiles are cut from stock {width} wide</source>
        <translation>les montants sont coupés dans un bois large de {width}</translation>
    </message>
    <message>
        <source>take-offs: primer and paint, screen, screws, covering, sealant, flashing, mast</source>
        <translation>métrés : apprêt et peinture, grillage, vis, couverture, mastic, solins, mât</translation>
    </message>
    <message>
        <source>the assembly book: steps with pictures, fastening plan, bench blocks, fixing to the roof</source>
        <translation>le livret de montage : étapes en images, plan de fixation, cales d’établi, pose sur le toit</translation>
    </message>
    <message>
        <source>the bed mould is {nailer} wide and the stock {width}</source>
        <translation>la moulure est large de {nailer} et le bois de {width}</translation>
    </message>
    <message>
        <source>the bench sheet: dados and story sticks, laps, rips by stock, holes, test pairs, order of cuts</source>
        <translation>la feuille d'établi : rainures et piges, mi-bois, délignages par bois, trous, paires d'essai, ordre des coupes</translation>
    </message>
    <message>
        <source>the boards of both corners would meet in the middle of a side {side} long</source>
        <translation>les planches des deux angles se joindraient au milieu d'un côté long de {side}</translation>
    </message>
    <message>
        <source>the break must lie below the middle of the rafters</source>
        <translation>la brisure doit être sous le milieu des chevrons</translation>
    </message>
    <message>
        <source>the buying list: what to buy, and what is cut from each stick and sheet</source>
        <translation>la liste d'achat : ce qu'il faut acheter, et ce qui est débité dans chaque barre et chaque panneau</translation>
    </message>
    <message>
        <source>the cap would lie under the legs, which stand {inner} from the ridge</source>
        <translation>la faîtière serait sous les pieds, qui sont à {inner} du faîtage</translation>
    </message>
    <message>
        <source>the checks: dry fit, rain, air, movement of the wood, what errors at the saw do</source>
        <translation>les contrôles : montage à blanc, pluie, air, jeu du bois, effet des erreurs de sciage</translation>
    </message>
    <message>
        <source>the cladding under it ends {head} above the joint of the stages and must reach {upstand}</source>
        <translation>le bardage au-dessous finit {head} au-dessus du joint des étages et doit atteindre {upstand}</translation>
    </message>
    <message>
        <source>the common</source>
        <translation>le chevron</translation>
    </message>
    <message>
        <source>the corner board stock's width, 140 mm at most</source>
        <translation>la largeur du bois des planches d'angle, 140 mm au plus</translation>
    </message>
    <message>
        <source>the cut report: every part, its cuts and joints, set-ups for the saw</source>
        <translation>le rapport de coupe : chaque pièce, ses coupes et assemblages, réglages de la scie</translation>
    </message>
    <message>
        <source>the eave of a flared roof must be {least_break:g}° flatter than its faces at {pitch:.1f}°</source>
        <translation>l'égout d'un toit à coyau doit être de {least_break:g}° plus plat que ses faces à {pitch:.1f}°</translation>
    </message>
    <message>
        <source>the eave-side board is narrower by its thickness and needs 20 mm</source>
        <translation>la planche côté égout est plus étroite de son épaisseur et demande 20 mm</translation>
    </message>
    <message>
        <source>the eave-side plank is narrower by the frame's thickness {frame_t} and needs 20 mm</source>
        <translation>la planche côté égout est plus étroite de l'épaisseur du cadre, {frame_t}, et demande 20 mm</translation>
    </message>
    <message>
        <source>the fascia would hang {low} below the top of the louvers and hide them</source>
        <translation>le bandeau pendrait {low} sous le haut des lames et les cacherait</translation>
    </message>
    <message>
        <source>the fewest that hide the sky at the rain angle</source>
        <translation>le moins qui cache le ciel sous l'angle de pluie</translation>
    </message>
    <message>
        <source>the fraction {top}/{bottom} divides by nought; give it a bottom of 1 or more</source>
        <translation>la fraction {top}/{bottom} divise par zéro ; donnez-lui un dénominateur de 1 ou plus</translation>
    </message>
    <message>
        <source>the fraction {top}/{bottom} is not less than 1; if it is meant, write {cure}</source>
        <translation>la fraction {top}/{bottom} n'est pas inférieure à 1 ; si c'est voulu, écrivez {cure}</translation>
    </message>
    <message>
        <source>the frame stock's width; 0.15 of a side at most with 6 or 8 sides</source>
        <translation>la largeur du bois de cadre ; au plus 0,15 d'un côté avec 6 ou 8 côtés</translation>
    </message>
    <message>
        <source>the hip</source>
        <translation>l'arêtier</translation>
    </message>
    <message>
        <source>the jack or common</source>
        <translation>l'empannon ou le chevron</translation>
    </message>
    <message>
        <source>the key “{key}” stands twice in one object; keep one</source>
        <translation>la clé « {key} » figure deux fois dans un même objet ; gardez-en une</translation>
    </message>
    <message>
        <source>the king post would be {length} long</source>
        <translation>le poinçon serait long de {length}</translation>
    </message>
    <message>
        <source>the legs leave {clear} between them, and the opening in the roof must be {least_opening} wide</source>
        <translation>les pieds laissent {clear} entre eux, et l'ouverture du toit doit être large de {least_opening}</translation>
    </message>
    <message>
        <source>the lift plan: weights, centres, people, slings, wind</source>
        <translation>le plan de levage : poids, centres de gravité, personnes, élingues, vent</translation>
    </message>
    <message>
        <source>the list's usual stock for this use</source>
        <translation>le bois usuel de la liste pour cet emploi</translation>
    </message>
    <message>
        <source>the longer of length and width may be twice the other, here {least} to {most}</source>
        <translation>la plus grande de la longueur et de la largeur peut être le double de l'autre, ici de {least} à {most}</translation>
    </message>
    <message>
        <source>the minutes must be a whole number when seconds follow</source>
        <translation>les minutes doivent être un nombre entier quand des secondes suivent</translation>
    </message>
    <message>
        <source>the mullion is cut from frame stock {frame_w} wide</source>
        <translation>le meneau est coupé dans un bois de cadre large de {frame_w}</translation>
    </message>
    <message>
        <source>the opening is narrower than the louvers and holds the air back. Set a smaller opening margin, or count on the opening's area.</source>
        <translation>l'ouverture est plus étroite que les lames et retient l'air. Mettez une marge de l'ouverture plus petite, ou comptez sur la surface de l'ouverture.</translation>
    </message>
    <message>
        <source>the opening is no narrower than the louvers; narrowest on the air's way: {narrowest}.</source>
        <translation>l'ouverture n'est pas plus étroite que les lames ; passage le plus étroit sur le chemin de l'air : {narrowest}.</translation>
    </message>
    <message>
        <source>the points and commas in {text} do not fit; write it with one point</source>
        <translation>les points et virgules de {text} ne s'accordent pas ; écrivez-le avec un point</translation>
    </message>
    <message>
        <source>the rafters are only {deepest} deep plumb and would not reach the soffit</source>
        <translation>les chevrons n'ont que {deepest} de hauteur d'aplomb et n'atteindraient pas la sous-face</translation>
    </message>
    <message>
        <source>the ridge board</source>
        <translation>la panne faîtière</translation>
    </message>
    <message>
        <source>the ridge must pass between the legs, {most} from the axis at most</source>
        <translation>le faîtage doit passer entre les pieds, à {most} de l'axe au plus</translation>
    </message>
    <message>
        <source>the ring's inner edge would stand {proud} above the sill and hold water</source>
        <translation>le bord intérieur du larmier serait {proud} au-dessus de l'appui et retiendrait l'eau</translation>
    </message>
    <message>
        <source>the ring's nose would hang down below the base's top rail</source>
        <translation>le nez du larmier pendrait sous la traverse haute de la base</translation>
    </message>
    <message>
        <source>the run after the mark is nought, and a pitch needs a run of more than 0</source>
        <translation>la longueur après le signe est nulle, et une pente demande une longueur de plus de 0</translation>
    </message>
    <message>
        <source>the screen hangs {low} below the rail's top, and the panel is shallower than the rail, {frame_t}</source>
        <translation>le grillage pend {low} sous le haut de la traverse, et le panneau est moins profond que la traverse, {frame_t}</translation>
    </message>
    <message>
        <source>the sheathing leaves the mast's bearer less than {least_bearing} of plate</source>
        <translation>le voligeage laisse au porte-mât moins de {least_bearing} de sablière</translation>
    </message>
    <message>
        <source>the sill needs a blank {blank} wide and its stock is {width}</source>
        <translation>l'appui demande une ébauche large de {blank} et son bois fait {width}</translation>
    </message>
    <message>
        <source>the slats' slope</source>
        <translation>la pente des lames</translation>
    </message>
    <message>
        <source>the slats' slope, 45° at most</source>
        <translation>la pente des lames, 45° au plus</translation>
    </message>
    <message>
        <source>the slope drops {twist} further there than at its other end, and a twist may be {most_twist} at most</source>
        <translation>le versant descend là de {twist} plus qu'à son autre bout, et un gauche peut être de {most_twist} au plus</translation>
    </message>
    <message>
        <source>the soffit would lie {nailer} below the plate's top and leave no nailer</source>
        <translation>la sous-face serait {nailer} sous le haut de la sablière et ne laisserait pas de fourrure</translation>
    </message>
    <message>
        <source>the soles reach {top} above the ridge and would meet the top rail at {rail_under}</source>
        <translation>les semelles montent {top} au-dessus du faîtage et rencontreraient la traverse haute à {rail_under}</translation>
    </message>
    <message>
        <source>the stock list has {own} for “{name}”, and what differs by more than {share:g} % is another stock</source>
        <translation>la liste des bois a {own} pour « {name} », et ce qui s'en écarte de plus de {share:g} % est un autre bois</translation>
    </message>
    <message>
        <source>the stock list “{name}” has no such item</source>
        <translation>la liste des bois « {name} » n'a pas cet article</translation>
    </message>
    <message>
        <source>the vent's roof reaches {roof} from its axis and would stand out over the end of the ridge</source>
        <translation>le toit du lanterneau s'étend à {roof} de son axe et dépasserait le bout du faîtage</translation>
    </message>
    <message>
        <source>the {big} must be a whole number when {small} follow; write it in one unit</source>
        <translation>les {big} doivent être un nombre entier quand des {small} suivent ; écrivez-le en une seule unité</translation>
    </message>
    <message>
        <source>the {count} vents would stand {spacing} from axis to axis and need {least}</source>
        <translation>les {count} lanterneaux seraient à {spacing} d'axe en axe et demandent {least}</translation>
    </message>
    <message>
        <source>there are {count} numbers in it, and a length has one or two</source>
        <translation>il contient {count} nombres, et une longueur en a un ou deux</translation>
    </message>
    <message>
        <source>there is no king post under a ridge to carry it</source>
        <translation>il n'y a pas de poinçon sous un faîtage pour le porter</translation>
    </message>
    <message>
        <source>there is no room for a sill and one slat between the rails</source>
        <translation>il n'y a pas de place pour un appui et une lame entre les traverses</translation>
    </message>
    <message>
        <source>there is no room for bearer and step under the king post</source>
        <translation>il n'y a pas de place pour porte-mât et emplanture sous le poinçon</translation>
    </message>
    <message>
        <source>there is no room for it between the soles and the top rail</source>
        <translation>il n'y a pas de place pour elle entre les semelles et la traverse haute</translation>
    </message>
    <message>
        <source>there is no such kind of part</source>
        <translation>il n'y a pas de telle sorte de pièce</translation>
    </message>
    <message>
        <source>there is no {element} any more. Pick the roof again.</source>
        <translation>il n'y a plus de {element}. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>there is room for {gable_slats} slats of {least_slat} or more under the peak; {least_gable_slats} are the least</source>
        <translation>il y a place pour {gable_slats} lames de {least_slat} ou plus sous la pointe ; {least_gable_slats} sont le minimum</translation>
    </message>
    <message>
        <source>they would stand {bay} apart; {least_bay} is the least</source>
        <translation>ils seraient écartés de {bay} ; {least_bay} est le minimum</translation>
    </message>
    <message>
        <source>they would stand {spacing} from axis to axis and need {least}, for their width with 300 mm between and for their roofs</source>
        <translation>ils seraient à {spacing} d'axe en axe et demandent {least}, pour leur largeur avec 300 mm entre eux et pour leurs toits</translation>
    </message>
    <message>
        <source>thick</source>
        <translation>en épaisseur</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>épaisseur</translation>
    </message>
    <message>
        <source>thicknessed to {thickness}</source>
        <translation>raboté à {thickness}</translation>
    </message>
    <message>
        <source>throat</source>
        <translation>gorge</translation>
    </message>
    <message>
        <source>to cover the rafters' plumb cuts the ridge must be {deep} deep, and the stock is {width} wide</source>
        <translation>pour couvrir les coupes d'aplomb des chevrons, la pièce de faîtage doit être haute de {deep}, et le bois est large de {width}</translation>
    </message>
    <message>
        <source>trim stock</source>
        <translation>bois de l'habillage</translation>
    </message>
    <message>
        <source>trim thickness</source>
        <translation>épaisseur (bois de l'habillage)</translation>
    </message>
    <message>
        <source>trim width</source>
        <translation>largeur (bois de l'habillage)</translation>
    </message>
    <message>
        <source>two numbers are read only as feet and inches or metres and cm or mm</source>
        <translation>deux nombres ne sont lus que comme pieds et pouces ou mètres et cm ou mm</translation>
    </message>
    <message>
        <source>up the slope</source>
        <translation>en montant le versant</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>usuel</translation>
    </message>
    <message>
        <source>usual: {name}</source>
        <translation>usuel : {name}</translation>
    </message>
    <message>
        <source>wide</source>
        <translation>en largeur</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>with the seat depth it takes {depth} of a sole, more than half its width</source>
        <translation>avec la profondeur d'assise elle prend {depth} d'une semelle, plus de la moitié de sa largeur</translation>
    </message>
    <message>
        <source>without a unit</source>
        <translation>une valeur sans unité</translation>
    </message>
    <message>
        <source>write figures and a unit, like 40 mm, 3 1/2 in or 5'-3 1/2"</source>
        <translation>écrivez des chiffres et une unité, comme 40 mm, 3 1/2 in ou 5'-3 1/2"</translation>
    </message>
    <message>
        <source>write figures and a unit, like {example}</source>
        <translation>écrivez des chiffres et une unité, comme {example}</translation>
    </message>
    <message>
        <source>write it with figures, like 3.5 or 3 1/2</source>
        <translation>écrivez-le en chiffres, comme 3.5 ou 3 1/2</translation>
    </message>
    <message>
        <source>write yes or no</source>
        <translation>écrivez oui ou non (yes, no)</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>oui ou non (yes, no)</translation>
    </message>
    <message>
        <source>{apart:.0f} mm apart</source>
        <translation>à {apart:.0f} mm l'un de l'autre</translation>
    </message>
    <message>
        <source>{count} files are written. A double click opens one.</source>
        <translation>{count} fichiers sont écrits. Un double-clic en ouvre un.</translation>
    </message>
    <message>
        <source>{count} slopes are picked. Pick the two that meet in the ridge.</source>
        <translation>{count} versants sont choisis. Choisissez les deux qui se joignent au faîtage.</translation>
    </message>
    <message>
        <source>{count} vents share the ridge and are spaced along it</source>
        <translation>{count} lanterneaux se partagent le faîtage et y sont répartis</translation>
    </message>
    <message>
        <source>{element} is curved, and a ridge is straight. {needed}.</source>
        <translation>{element} est courbe, et un faîtage est droit. {needed}.</translation>
    </message>
    <message>
        <source>{element} is curved, and a vent is cut to plane slopes. Pick plane faces, or draw planes that touch the roof where the vent stands, and pick those.</source>
        <translation>{element} est courbe, et un lanterneau est coupé pour des versants plans. Choisissez des faces planes, ou dessinez des plans qui touchent le toit à l'endroit du lanterneau, et choisissez-les.</translation>
    </message>
    <message>
        <source>{element} looks down: it is the underside. Pick the faces of the covering, which look up.</source>
        <translation>{element} regarde vers le bas : c'est le dessous. Choisissez les faces de la couverture, qui regardent vers le haut.</translation>
    </message>
    <message>
        <source>{element} stands at {pitch:.1f}°, as a wall or a gable does; a roof is less than {steepest:g}°. Pick the slopes, which look up.</source>
        <translation>{element} est à {pitch:.1f}°, comme un mur ou un pignon ; un toit a moins de {steepest:g}°. Choisissez les versants, qui regardent vers le haut.</translation>
    </message>
    <message>
        <source>{label} is empty. Give it a value.</source>
        <translation>{label} : le champ est vide. Donnez une valeur.</translation>
    </message>
    <message>
        <source>{low} to less than {high}.</source>
        <translation>de {low} à moins de {high}.</translation>
    </message>
    <message>
        <source>{low} to {high}.</source>
        <translation>de {low} à {high}.</translation>
    </message>
    <message>
        <source>{marks} would be cut otherwise today. {older}</source>
        <translation>{marks} seraient coupées autrement aujourd'hui. {older}</translation>
    </message>
    <message>
        <source>{mark} ({name}) must be {given} {what}, and it is sold {most} {what}</source>
        <translation>{mark} ({name}) doit faire {given} {what}, et le bois est vendu à {most} {what}</translation>
    </message>
    <message>
        <source>{mark} is drawn {drawn}: the piece is as it should be to {same_size:g} mm. Give the size that is wrong.</source>
        <translation>{mark} est dessinée à {drawn} : la pièce est juste à {same_size:g} mm près. Donnez la dimension qui est fausse.</translation>
    </message>
    <message>
        <source>{mm:g} mm is not a size that is sold. Give a length above 0 mm and at most {longest:g} mm.</source>
        <translation type="vanished">{mm:g} mm n'est pas une dimension vendue. Indiquez une longueur de plus de 0 mm et d'au plus {longest:g} mm.</translation>
    </message>
    <message>
        <source>{mm:g} mm is not a size that is sold. Give at least {least:g} mm and at most {most:g} mm.</source>
        <translation>{mm:g} mm n'est pas une dimension vendue. Donnez au moins {least:g} mm et au plus {most:g} mm.</translation>
    </message>
    <message>
        <source>{name} is {real:g} mm: it must be more than 0 mm. Measure the piece again.</source>
        <translation>{name} vaut {real:g} mm : il faut plus de 0 mm. Mesurez la pièce de nouveau.</translation>
    </message>
    <message>
        <source>{name} is {real}: {mark} is cut from “{stock}”, which is {most} at most. Measure the piece again{cure_text}.</source>
        <translation>{name} vaut {real} : {mark} est coupée dans « {stock} », qui fait {most} au plus. Mesurez la pièce de nouveau{cure_text}.</translation>
    </message>
    <message>
        <source>{number} already has decimals and cannot have a fraction after it</source>
        <translation>{number} a déjà des décimales et ne peut être suivi d'une fraction</translation>
    </message>
    <message>
        <source>{pitch} slope</source>
        <translation>versant de {pitch}</translation>
    </message>
    <message>
        <source>{rafter} has less than {least_bearing} of seat on the plate</source>
        <translation>{rafter} a moins de {least_bearing} d'assise sur la sablière</translation>
    </message>
    <message>
        <source>{rafter} is notched {notch}, deeper than a third of its depth, {most}</source>
        <translation>{rafter} est entaillé de {notch}, plus d'un tiers de sa hauteur, {most}</translation>
    </message>
    <message>
        <source>{small:g} {small_unit} make 1 {big_unit} or more; carry them over</source>
        <translation>{small:g} {small_unit} font 1 {big_unit} ou plus ; reportez-les</translation>
    </message>
    <message>
        <source>{text} may mean {one} or {other}, so write the one that is meant</source>
        <translation>{text} peut signifier {one} ou {other}, écrivez donc ce qui est voulu</translation>
    </message>
    <message>
        <source>{value} (from the expression “{text}”)</source>
        <translation>{value} (de l'expression « {text} »)</translation>
    </message>
    <message>
        <source>{vent}, number {number}</source>
        <translation>{vent}, numéro {number}</translation>
    </message>
    <message>
        <source>{where} is {value}: {limit}. {cure}</source>
        <translation>{where} vaut {value} : {limit}. {cure}</translation>
    </message>
    <message>
        <source>{why} would collide on a post {has} thick; it must be {need}</source>
        <translation>{why} se heurteraient sur un poinçon épais de {has} ; il lui faut {need}</translation>
    </message>
    <message>
        <source>{wood} of wood and a gap of {gap} are left between slats; {dado_wood} and {least_gap} are the least</source>
        <translation>il reste {wood} de bois et un jour de {gap} entre les lames ; {dado_wood} et {least_gap} sont le minimum</translation>
    </message>
    <message>
        <source>“error” is {reading:g}{makes}; it must be at least 0, and the pitch may be off by at most {largest_error:g}°. Measure again more closely.</source>
        <translation>« error » vaut {reading:g}{makes} ; il faut au moins 0, et la pente peut être fausse de {largest_error:g}° au plus. Mesurez de nouveau plus finement.</translation>
    </message>
    <message>
        <source>“error” is {tape}, which on so short a run turns the pitch by {error}; at most {largest_error:g}° can be used. Measure a longer run.</source>
        <translation>« error » vaut {tape}, ce qui sur une longueur si courte tourne la pente de {error} ; {largest_error:g}° au plus sont utilisables. Mesurez sur une plus grande longueur.</translation>
    </message>
    <message>
        <source>“gable”</source>
        <translation>« à pignons »</translation>
    </message>
    <message>
        <source>“louvered”</source>
        <translation>« à lames »</translation>
    </message>
    <message>
        <source>“ridge_angle” and both slopes are given, and they may disagree. Give the angle and one slope, or both slopes.</source>
        <translation>« ridge_angle » et les deux versants sont donnés et peuvent se contredire. Donnez l'angle et un versant, ou les deux versants.</translation>
    </message>
    <message>
        <source>“ridge_angle” is {included}, which with a {side} slope of {slope} leaves {other} for the other slope; that must be at least 0° and less than {steepest:g}°. Measure both again.</source>
        <translation>« ridge_angle » vaut {included}, ce qui avec une pente {side} de {slope} laisse {other} pour l'autre versant ; il faut au moins 0° et moins de {steepest:g}°. Mesurez les deux de nouveau.</translation>
    </message>
    <message>
        <source>“rise_left” and “run_left” are missing. Give them; the right slope alone is not enough.</source>
        <translation>« rise_left » et « run_left » manquent. Donnez-les ; le versant droit seul ne suffit pas.</translation>
    </message>
    <message>
        <source>“rise_{side}” is {rise:g} mm; it must be 0 mm or more. Measure it up from the level.</source>
        <translation>« rise_{side} » vaut {rise:g} mm ; il faut 0 mm ou plus. Mesurez en montant depuis l'horizontale.</translation>
    </message>
    <message>
        <source>“run_{side}” is {run:g} mm; it must be more than the tape's error of {error:g} mm. Measure a longer run.</source>
        <translation>« run_{side} » vaut {run:g} mm ; il faut plus que l'erreur du ruban de {error:g} mm. Mesurez sur une plus grande longueur.</translation>
    </message>
    <message>
        <source>“slope_left” is missing. Give it or the ridge_angle; the right slope alone is not enough.</source>
        <translation>« slope_left » manque. Donnez-le ou ridge_angle ; le versant droit seul ne suffit pas.</translation>
    </message>
    <message>
        <source>“{element}” is neither a face nor an edge. {needed}.</source>
        <translation>« {element} » n'est ni une face ni une arête. {needed}.</translation>
    </message>
    <message>
        <source>“{element}” is not there any more. Pick the roof again.</source>
        <translation>« {element} » a disparu. Choisissez le toit de nouveau.</translation>
    </message>
    <message>
        <source>“{form}” is not a form; known are {forms}.</source>
        <translation>« {form} » n'est pas une forme ; sont connues {forms}.</translation>
    </message>
    <message>
        <source>“{key}” gives a slope of {pitch}; it must be at least 0° and less than {steepest:g}°. Measure again from the level.</source>
        <translation>« {key} » donne une pente de {pitch} ; il faut au moins 0° et moins de {steepest:g}°. Mesurez de nouveau depuis l'horizontale.</translation>
    </message>
    <message>
        <source>“{key}” is not a key here; known are {known}.</source>
        <translation>« {key} » n'est pas une clé ici ; sont connues {known}.</translation>
    </message>
    <message>
        <source>“{key}” is not a reading; known are {keys}.</source>
        <translation>« {key} » n'est pas une mesure ; sont connues {keys}.</translation>
    </message>
    <message>
        <source>“{key}” is {angle}; it must be more than {over:g}° and at most {most:g}°. Measure the angle between the two slopes, from underneath.</source>
        <translation>« {key} » vaut {angle} ; il faut plus de {over:g}° et {most:g}° au plus. Mesurez l'angle entre les deux versants, par-dessous.</translation>
    </message>
    <message>
        <source>“{key}”: {error}</source>
        <translation>« {key} » : {error}</translation>
    </message>
    <message>
        <source>“{label}” has no faces, and a roof is read from its faces. {needed}.</source>
        <translation>« {label} » n'a pas de faces, et un toit est lu sur ses faces. {needed}.</translation>
    </message>
    <message>
        <source>“{label}” is a mesh, which has no plane faces. Make a shape from it in the Part workbench, refine it and convert it to a solid, or draw the two slopes on it; then pick those.</source>
        <translation>« {label} » est un maillage, qui n'a pas de faces planes. Faites-en une forme dans l'atelier Part, affinez-la et convertissez-la en solide, ou dessinez les deux versants dessus ; puis choisissez-les.</translation>
    </message>
    <message>
        <source>“{label}” is {what}. {needed}.</source>
        <translation>« {label} » est {what}. {needed}.</translation>
    </message>
    <message>
        <source>“{lacks}” is missing, and “{has}” means nothing without it. Give both.</source>
        <translation>« {lacks} » manque, et « {has} » ne dit rien sans lui. Donnez les deux.</translation>
    </message>
    <message>
        <source>“{mark}” came out wrong in all its pieces. Name only others that are cut already.</source>
        <translation>« {mark} » est ratée dans toutes ses pièces. Nommez seulement d'autres pièces déjà coupées.</translation>
    </message>
    <message>
        <source>“{mark}” is left out of this vent: it is not made here. Choose one of: {parts}.</source>
        <translation>« {mark} » est omis de ce lanterneau : il n'est pas fait ici. Choisissez parmi : {parts}.</translation>
    </message>
    <message>
        <source>“{mark}” is not a mark of this vent. Choose one of: {parts}.</source>
        <translation>« {mark} » n'est pas un repère de ce lanterneau. Choisissez parmi : {parts}.</translation>
    </message>
    <message>
        <source>“{name}”</source>
        <translation>« {name} »</translation>
    </message>
    <message>
        <source>“{name}” belongs to no vent any more and keeps its last shape. Delete it, or copy whole vents only.</source>
        <translation>« {name} » n'appartient plus à aucun lanterneau et garde sa dernière forme. Supprimez-le, ou ne copiez que des lanterneaux entiers.</translation>
    </message>
    <message>
        <source>“{name}” belongs to “{vent}” and follows its parameters. Hide it, or delete the whole vent.</source>
        <translation>« {name} » appartient à « {vent} » et suit ses paramètres. Masquez-le, ou supprimez le lanterneau entier.</translation>
    </message>
    <message>
        <source>“{name}” has its opening already: “{opening}”. Change the properties of that, or delete it first.</source>
        <translation>« {name} » a déjà son ouverture : « {opening} ». Changez les propriétés de celle-ci, ou supprimez-la d'abord.</translation>
    </message>
    <message>
        <source>“{name}” is a {form}, and the use needs a {forms}. Name another item.</source>
        <translation>« {name} » a la forme {form}, et l'emploi demande {forms}. Nommez un autre article.</translation>
    </message>
    <message>
        <source>“{name}” is in neither list. Add it to the items or name another.</source>
        <translation>« {name} » n'est dans aucune des deux listes. Ajoutez-le aux articles ou nommez-en un autre.</translation>
    </message>
    <message>
        <source>“{name}” is in the document “{document}”, and the vent is not. Put a link to it into the vent's document, and pick that, or make the vent there.</source>
        <translation>« {name} » est dans le document « {document} », et le lanterneau n'y est pas. Mettez-en un lien dans le document du lanterneau et choisissez-le, ou faites le lanterneau là-bas.</translation>
    </message>
    <message>
        <source>“{name}” is made from the vent “{vent}” or shows it, so the vent cannot follow it. Pick the roof as it is without the vent, before the opening is cut into it.</source>
        <translation>« {name} » est fait du lanterneau « {vent} » ou le montre, le lanterneau ne peut donc pas le suivre. Choisissez le toit tel qu'il est sans le lanterneau, avant que l'ouverture y soit coupée.</translation>
    </message>
    <message>
        <source>“{name}” is not a parameter</source>
        <translation>« {name} » n'est pas un paramètre</translation>
    </message>
    <message>
        <source>“{name}” is not a shipped list; known are {bases}.</source>
        <translation>« {name} » n'est pas une liste fournie ; sont connues {bases}.</translation>
    </message>
    <message>
        <source>“{name}” is not in the stock list. Choose one of: {names}.</source>
        <translation>« {name} » n'est pas dans la liste des bois. Choisissez parmi : {names}.</translation>
    </message>
    <message>
        <source>“{name}” is not the name of an item. Write it as text.</source>
        <translation>« {name} » n'est pas le nom d'un article. Écrivez-le comme un texte.</translation>
    </message>
    <message>
        <source>“{name}” stands free, so there is no roof to cut. Pick a roof for it with Edit vent, or delete the opening.</source>
        <translation>« {name} » est libre, il n'y a donc pas de toit à couper. Choisissez-lui un toit avec « Modifier le lanterneau », ou supprimez l'ouverture.</translation>
    </message>
    <message>
        <source>“{name}” stands {times} times in the list. Give each item a name of its own.</source>
        <translation>« {name} » figure {times} fois dans la liste. Donnez à chaque article son propre nom.</translation>
    </message>
    <message>
        <source>“{name}” was taken off RidgeBoards: it is made from this opening, or holds it.</source>
        <translation>« {name} » a été retiré de RidgeBoards : il est fait de cette ouverture, ou la contient.</translation>
    </message>
    <message>
        <source>“{name}” was written by a newer Louverwright (schema {its}; this one knows {ours}). It keeps its last shape; install the newer Louverwright to change it.</source>
        <translation>« {name} » a été écrit par un Louverwright plus récent (schéma {its} ; celui-ci connaît {ours}). Il garde sa dernière forme ; installez le Louverwright plus récent pour le changer.</translation>
    </message>
    <message>
        <source>“{name}” was written by a newer Louverwright. It keeps its last shape; install the newer Louverwright to change it.</source>
        <translation>« {name} » a été écrit par un Louverwright plus récent. Il garde sa dernière forme ; installez le Louverwright plus récent pour le changer.</translation>
    </message>
    <message>
        <source>“{name}”, which is not to be cut, has no faces. Take it off the list RidgeBoards, and put the drawn board itself there.</source>
        <translation>« {name} », qui ne doit pas être coupé, n'a pas de faces. Retirez-le de la liste RidgeBoards, et mettez-y le bois dessiné lui-même.</translation>
    </message>
    <message>
        <source>“{name}”: one slope of {pitch}.</source>
        <translation>« {name} » : un versant de {pitch}.</translation>
    </message>
    <message>
        <source>“{name}”: {left} left, {right} right, a ridge of {ridge}.</source>
        <translation>« {name} » : {left} à gauche, {right} à droite, un faîtage de {ridge}.</translation>
    </message>
    <message>
        <source>“{text}” is not {what} that can be read: {why}.</source>
        <translation>« {text} » ne peut pas être lu comme {what} : {why}.</translation>
    </message>
    <message>
        <source>“{use}” is not a use; known are {uses}.</source>
        <translation>« {use} » n'est pas un emploi ; sont connus {uses}.</translation>
    </message>
    <message>
        <source>“{value}” is not a length. Write millimetres, or a text with its unit.</source>
        <translation>« {value} » n'est pas une longueur. Écrivez des millimètres, ou un texte avec son unité.</translation>
    </message>
    <message>
        <source>“{value}” is not a number. Write figures, or a text with its unit.</source>
        <translation>« {value} » n'est pas un nombre. Écrivez des chiffres, ou un texte avec son unité.</translation>
    </message>
    <message>
        <source>“{value}” is not a reading. Write a number, or a text with its unit.</source>
        <translation>« {value} » n'est pas une mesure. Écrivez un nombre, ou un texte avec son unité.</translation>
    </message>
    <message>
        <source>“{value}” is not text. Put it in quotes.</source>
        <translation>« {value} » n'est pas du texte. Mettez-le entre guillemets.</translation>
    </message>
    <message>
        <source>“{vent}” stands on a roof that was read before. {error}</source>
        <translation>« {vent} » est posé sur un toit lu auparavant. {error}</translation>
    </message>
</context>
<context>
    <name>App::Property</name>
    <message>
        <source>A middle stile; automatic: where the clear width passes the slats' span.</source>
        <translation>Un meneau ; automatique : là où la largeur libre dépasse la portée des lames.</translation>
    </message>
    <message>
        <source>A note for the shop, printed on the part's sheet and in the cut list.</source>
        <translation>Une note pour l'atelier, imprimée sur la feuille de la pièce et dans la liste de débit.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Area of the opening in plan, without what is left standing; of one vent, and of several the least.</source>
        <translation>Surface de l'ouverture en plan, sans ce qui y reste debout ; celle d'un lanterneau, et de plusieurs la plus petite.</translation>
    </message>
    <message>
        <source>Area of the opening in the roof, level; ridge board and rafters that stay take from it.</source>
        <translation>Surface de l'ouverture du toit, de niveau ; la panne faîtière et les chevrons qui restent en sont à déduire.</translation>
    </message>
    <message>
        <source>Area of the vent's roof to be covered.</source>
        <translation>Surface du toit du lanterneau à couvrir.</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Mesures réelles</translation>
    </message>
    <message>
        <source>Barn roof</source>
        <translation>Toit de la grange</translation>
    </message>
    <message>
        <source>Battens that hold the screen. Empty: the list's usual stock for this use.</source>
        <translation>Liteaux qui tiennent le grillage. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Cap plates, laid flat. Empty: the list's usual stock for this use.</source>
        <translation>Sablières hautes, posées à plat. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Cladding</source>
        <translation>Bardage</translation>
    </message>
    <message>
        <source>Cladding: a sheet, or a board for board cladding. Empty: the list's usual stock for this use.</source>
        <translation>Bardage : un panneau, ou une planche pour un bardage en planches. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Clear area inside the base frame and the panels.</source>
        <translation>Section libre à l'intérieur du cadre de la base et des panneaux.</translation>
    </message>
    <message>
        <source>Clear gap between slats, square to them.</source>
        <translation>Jour libre entre les lames, d'équerre sur elles.</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Jeux</translation>
    </message>
    <message>
        <source>Coats of paint over the primer. 0 to 6.</source>
        <translation>Couches de peinture sur l’apprêt. de 0 à 6.</translation>
    </message>
    <message>
        <source>Coats of primer. 0 to 4.</source>
        <translation>Couches d’apprêt. de 0 à 4.</translation>
    </message>
    <message>
        <source>Corner boards of the base. Empty: the list's usual stock for this use.</source>
        <translation>Planches d'angle de la base. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Depth of a louver panel, which is the width of its stiles. 40 mm to 250 mm.</source>
        <translation>Profondeur d'un panneau à lames, qui est la largeur de ses montants. de 40 mm à 250 mm.</translation>
    </message>
    <message>
        <source>Depth of the dados that take the slats. 3 mm to 25 mm.</source>
        <translation>Profondeur des rainures qui reçoivent les lames. de 3 mm à 25 mm.</translation>
    </message>
    <message>
        <source>Design wind speed of the place in m/s, as the code there gives it (three-second gust). 20.0 to 90.0. 0: not given.</source>
        <translation>Vitesse de vent de calcul du lieu en m/s, telle que la norme locale la donne (rafale de trois secondes). de 20.0 à 90.0. 0: non donné.</translation>
    </message>
    <message>
        <source>Diameter of the mast through the roof for a vane or finial; 0 for none. 15 mm to 120 mm. 0: no mast.</source>
        <translation>Diamètre du mât qui traverse le toit pour une girouette ou un épi ; 0 sans mât. de 15 mm à 120 mm. 0: pas de mât.</translation>
    </message>
    <message>
        <source>Different marks.</source>
        <translation>Repères différents.</translation>
    </message>
    <message>
        <source>Direction of the roof sheathing's face grain.</source>
        <translation>Sens du fil de face du voligeage.</translation>
    </message>
    <message>
        <source>Distance of the roof opening's edge from the inside of the legs. 0 mm to 300 mm.</source>
        <translation>Distance du bord de l'ouverture du toit à l'intérieur des pieds. de 0 mm à 300 mm.</translation>
    </message>
    <message>
        <source>Drip ring. Empty: the list's usual stock for this use.</source>
        <translation>Larmier. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Fascia and bed mould. Empty: the list's usual stock for this use.</source>
        <translation>Bandeau d'égout et moulure. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Floor that the vents together air, in square metres. 0.0 to 100000.0. 0: not given.</source>
        <translation>Surface au sol que les lanterneaux aèrent ensemble, en mètres carrés. de 0.0 à 100000.0. 0: non donné.</translation>
    </message>
    <message>
        <source>Form of the vent's roof: hipped on every side; hipped with a kicked eave, two pitches a face; or two faces that end in gables.</source>
        <translation>Forme du toit du lanterneau : croupes de tous côtés ; croupes à coyau, deux pentes par face ; ou deux faces qui finissent en pignons.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Free area of one vent's louvers.</source>
        <translation>Section libre des lames d'un lanterneau.</translation>
    </message>
    <message>
        <source>Free area wanted from this vent; 0 where no target is set.</source>
        <translation>Section libre voulue de ce lanterneau ; 0 si aucune n'est fixée.</translation>
    </message>
    <message>
        <source>From axis to axis of the vents along the ridge; 0 for one vent.</source>
        <translation>D'axe en axe des lanterneaux le long du faîtage ; 0 pour un seul.</translation>
    </message>
    <message>
        <source>From slat to slat, plumb.</source>
        <translation>De lame à lame, d'aplomb.</translation>
    </message>
    <message>
        <source>From the gables' cladding to the back of the barge boards, level. 30 mm to 400 mm. 0: half the overhang.</source>
        <translation>Du bardage des pignons au dos des planches de rive, de niveau. de 30 mm à 400 mm. 0: la moitié du débord.</translation>
    </message>
    <message>
        <source>From the plate's edge to the rafters' tails, level. 40 mm to 600 mm.</source>
        <translation>Du bord de la sablière au bout des chevrons, de niveau. de 40 mm à 600 mm.</translation>
    </message>
    <message>
        <source>From the rafters' tails up to the break of a flared roof, level. 40 mm to 1200 mm. 0: as the overhang: the break lies over the plate's edge.</source>
        <translation>Du bout des chevrons jusqu'à la brisure d'un toit à coyau, de niveau. de 40 mm à 1200 mm. 0: comme le débord : la brisure est au-dessus du bord de la sablière.</translation>
    </message>
    <message>
        <source>From the ridge to the roof's peak.</source>
        <translation>Du faîtage au sommet du toit.</translation>
    </message>
    <message>
        <source>Gap all round where the louver stage drops inside the cladding. 1 mm to 10 mm.</source>
        <translation>Jeu tout autour, là où l'étage à lames entre dans le bardage. de 1 mm à 10 mm.</translation>
    </message>
    <message>
        <source>Gap between a louver panel and the posts and rail around it. 0.5 mm to 6 mm.</source>
        <translation>Jeu entre un panneau à lames et les poteaux et la traverse autour de lui. de 0.5 mm à 6 mm.</translation>
    </message>
    <message>
        <source>Gap between cladding boards. 0 mm to 20 mm.</source>
        <translation>Jeu entre les planches du bardage. de 0 mm à 20 mm.</translation>
    </message>
    <message>
        <source>Gap between the drip ring and the cladding and corner boards under it. 1 mm to 10 mm.</source>
        <translation>Jeu entre le larmier et le bardage et les planches d'angle au-dessous. de 1 mm à 10 mm.</translation>
    </message>
    <message>
        <source>Height above the ridge of the base's second rail on the gable sides (its lower edge). 0 mm to 2000 mm. 0: no second rail.</source>
        <translation>Hauteur au-dessus du faîtage de la seconde traverse de la base côté pignon (son bord inférieur). de 0 mm à 2000 mm. 0: pas de seconde traverse.</translation>
    </message>
    <message>
        <source>Height of the base's top above the ridge. 150 mm to 2000 mm. 0: 0.3 of the width; 150 mm and what soles and rail need at least.</source>
        <translation>Hauteur du haut de la base au-dessus du faîtage. de 150 mm à 2000 mm. 0: 0,3 de la largeur ; au moins 150 mm et ce que demandent semelles et traverse.</translation>
    </message>
    <message>
        <source>Height of the centre of gravity above the ridge.</source>
        <translation>Hauteur du centre de gravité au-dessus du faîtage.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame.</source>
        <translation>Hauteur du cadre de l'étage à lames.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame. 250 mm to 3000 mm. 0: 0.6 of the width.</source>
        <translation>Hauteur du cadre de l'étage à lames. de 250 mm à 3000 mm. 0: 0,6 de la largeur.</translation>
    </message>
    <message>
        <source>Hips, jacks and commons. Empty: the list's usual stock for this use.</source>
        <translation>Arêtiers, empannons et chevrons. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>How deep the opening is cut under the roof's surface, plumb. 0: through the roof's own thickness, 600 mm at most.</source>
        <translation>Profondeur à laquelle l'ouverture est coupée sous la surface du toit, d'aplomb. 0 : à travers l'épaisseur du toit, 600 mm au plus.</translation>
    </message>
    <message>
        <source>How deep the opening is cut, plumb.</source>
        <translation>Profondeur à laquelle l'ouverture est coupée, d'aplomb.</translation>
    </message>
    <message>
        <source>How far legs and soles sit below the roof's finished surface, square to the slope: 0 on the covering, the covering's thickness on the deck. 0 mm to 300 mm.</source>
        <translation>De combien pieds et semelles descendent sous la surface finie du toit, d'équerre au versant : 0 sur la couverture, l'épaisseur de la couverture sur le support. de 0 mm à 300 mm.</translation>
    </message>
    <message>
        <source>How far slats overlap at the rain angle.</source>
        <translation>De combien les lames se recouvrent sous l'angle de pluie.</translation>
    </message>
    <message>
        <source>How far the barn's ridge cap stands above its covering, plumb; soles and cladding are relieved over it. 0 if the cap is taken away under the vent. 0 mm to 150 mm.</source>
        <translation>De combien la faîtière de la grange dépasse sa couverture, d'aplomb ; semelles et bardage sont dégagés au-dessus. 0 si la faîtière est retirée sous le lanterneau. de 0 mm à 150 mm.</translation>
    </message>
    <message>
        <source>How far the drip ring reaches beyond the corner boards. 10 mm to 150 mm.</source>
        <translation>De combien le larmier dépasse les planches d'angle. de 10 mm à 150 mm.</translation>
    </message>
    <message>
        <source>How far the measured pitch may be off; the report says what it opens up at the foot. 0.00° to 5.00°.</source>
        <translation>De combien la pente mesurée peut être fausse ; le rapport dit ce que cela ouvre au pied. de 0.00° à 5.00°.</translation>
    </message>
    <message>
        <source>How far the roof lies lower at the vent's +X end than at its −X end, both slopes' mean; negative where the −X end is lower.</source>
        <translation>De combien le toit est plus bas au bout +X du lanterneau qu'à son bout −X, moyenne des deux versants ; négatif si le bout −X est plus bas.</translation>
    </message>
    <message>
        <source>How far the vent's axis stands to the left of the ridge (to the right if negative). -5000 mm to 5000 mm.</source>
        <translation>De combien l'axe du lanterneau est à gauche du faîtage (à droite si négatif). de -5000 mm à 5000 mm.</translation>
    </message>
    <message>
        <source>How far trim laps over the stiles and the frieze over the head rail. 3 mm to 18 mm. 0: 1 mm past the dados' ends, 10 mm at least.</source>
        <translation>De combien l'habillage recouvre les montants et la frise la traverse de tête. de 3 mm à 18 mm. 0: 1 mm au-delà du bout des rainures, 10 mm au moins.</translation>
    </message>
    <message>
        <source>How far your saw's blade tilts from upright. 0.00° to 60.00°.</source>
        <translation>De combien la lame de votre scie s'incline depuis l'aplomb. de 0.00° à 60.00°.</translation>
    </message>
    <message>
        <source>How far your saw's gauge swings from square. 0.00° to 70.00°.</source>
        <translation>De combien le guide de votre scie pivote depuis l'équerre. de 0.00° à 70.00°.</translation>
    </message>
    <message>
        <source>How many equal vents share the ridge. 1 to 24.</source>
        <translation>Combien de lanterneaux égaux se partagent le faîtage. de 1 à 24.</translation>
    </message>
    <message>
        <source>How many pieces the vent has; 0 if it has none.</source>
        <translation>Combien de pièces a le lanterneau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>How much further the left slope drops at one end than at the other.</source>
        <translation>De combien le versant gauche descend plus à un bout qu'à l'autre.</translation>
    </message>
    <message>
        <source>How much further the right slope drops at one end than at the other.</source>
        <translation>De combien le versant droit descend plus à un bout qu'à l'autre.</translation>
    </message>
    <message>
        <source>How much of a new stick you reckon lost to knots, wane and splits, in percent of its length. 0.0 to 40.0.</source>
        <translation>Ce que vous comptez perdre d'une barre neuve par les nœuds, le flache et les fentes, en pour cent de sa longueur. de 0.0 à 40.0.</translation>
    </message>
    <message>
        <source>How much of each course of the barn's shingles or tiles shows, up the slope; there is one step flashing for each. 60 mm to 600 mm. 0: sheet covering: side pans instead of steps.</source>
        <translation>Partie visible de chaque rang de bardeaux ou de tuiles de la grange, dans la pente ; à chacun correspond un solin à gradin. de 60 mm à 600 mm. 0: couverture en tôle : bandes latérales au lieu de gradins.</translation>
    </message>
    <message>
        <source>How much wider a dado is than the slat is thick. 0 mm to 1 mm.</source>
        <translation>De combien une rainure est plus large que la lame n'est épaisse. de 0 mm à 1 mm.</translation>
    </message>
    <message>
        <source>How planks turn a corner on a square plan: the gable side runs through and the eave side stops against it, or both are mitred. Other plans are always mitred.</source>
        <translation>Comment les planches tournent un angle sur plan carré : le côté pignon passe et le côté égout bute contre lui, ou les deux sont d'onglet. Les autres plans sont toujours d'onglet.</translation>
    </message>
    <message>
        <source>How the opening was cut.</source>
        <translation>Comment l'ouverture a été coupée.</translation>
    </message>
    <message>
        <source>How the pitch was measured, as it is to stand in the report.</source>
        <translation>Comment la pente a été mesurée, tel que cela doit figurer dans le rapport.</translation>
    </message>
    <message>
        <source>Inches are rounded to one part in so many on the report. 8 to 64.</source>
        <translation>Les pouces sont arrondis dans le rapport à une telle fraction. de 8 à 64.</translation>
    </message>
    <message>
        <source>Jack and common rafters on each side, between the hips; an odd number has a common at mid-side. Under a gable roof those between the gables' own. −1: automatic, by the sheathing's span. -1 to 12.</source>
        <translation>Empannons et chevrons de chaque côté, entre les arêtiers ; un nombre impair met un chevron au milieu du côté. Sous un toit à pignons, ceux entre les chevrons de pignon. −1 : automatique, d'après la portée du voligeage. de -1 à 12.</translation>
    </message>
    <message>
        <source>Jacks and commons on each side with an eave; of a rectangle on its long sides.</source>
        <translation>Empannons et chevrons de chaque côté qui a un égout ; d'un rectangle, sur ses longs côtés.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Joint to be caulked between trim and drip ring. 3 mm to 6 mm.</source>
        <translation>Joint à calfeutrer entre habillage et larmier. de 3 mm à 6 mm.</translation>
    </message>
    <message>
        <source>King post, square. Empty: the list's usual stock for this use.</source>
        <translation>Poinçon, carré. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Largest mitre at which your saw's blade still tilts fully; beyond it the tilt falls to nothing at the largest mitre. 0.00° to 70.00°.</source>
        <translation>Plus grand onglet auquel la lame de votre scie s'incline encore entièrement ; au-delà, l'inclinaison tombe à rien au plus grand onglet. de 0.00° à 70.00°.</translation>
    </message>
    <message>
        <source>Legs, posts, rails, soles, mullions and bearer. Empty: the list's usual stock for this use.</source>
        <translation>Pieds, poteaux, traverses, semelles, meneaux et porte-mât. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Length of a rectangular vent over the cladding, along the ridge (with a corner to the ridge, along its first side's direction); 1:2 of the width at most. 300 mm to 3600 mm. 0: as the width: a square.</source>
        <translation>Longueur d'un lanterneau rectangulaire hors bardage, le long du faîtage (avec un angle vers le faîtage : dans la direction de son premier côté) ; au plus 1:2 de la largeur. de 300 mm à 3600 mm. 0: comme la largeur : un carré.</translation>
    </message>
    <message>
        <source>Length of all eaves together, verges apart.</source>
        <translation>Longueur de tous les égouts ensemble, sans les rives.</translation>
    </message>
    <message>
        <source>Length of all verges of a gable roof together, up the slope.</source>
        <translation>Longueur de toutes les rives d'un toit à pignons ensemble, en montant le versant.</translation>
    </message>
    <message>
        <source>Length of one hip of the covering, eave to peak; 0 for a gable roof.</source>
        <translation>Longueur d'une arête de la couverture, de l'égout au sommet ; 0 pour un toit à pignons.</translation>
    </message>
    <message>
        <source>Length of the opening along the ridge, level; as its side but on a rectangle.</source>
        <translation>Longueur de l'ouverture le long du faîtage, de niveau ; égale à son côté, sauf sur un rectangle.</translation>
    </message>
    <message>
        <source>Length of the vent over the cladding, along the ridge; as the width but on a rectangle.</source>
        <translation>Longueur du lanterneau hors bardage, le long du faîtage ; égale à la largeur, sauf sur un rectangle.</translation>
    </message>
    <message>
        <source>Length of the vent's own ridge in the covering; 0 where the hips meet in a point.</source>
        <translation>Longueur du faîtage propre du lanterneau dans la couverture ; 0 si les arêtes se joignent en un point.</translation>
    </message>
    <message>
        <source>Length of unbroken ridge that the vents share; 0 if it does not matter. 0 mm to 500000 mm. 0: not given.</source>
        <translation>Longueur de faîtage continu que les lanterneaux se partagent ; 0 si elle est indifférente. de 0 mm à 500000 mm. 0: non donné.</translation>
    </message>
    <message>
        <source>Length of your driver with its bit, along the screw. 120 mm to 600 mm.</source>
        <translation>Longueur de votre visseuse avec son embout, dans l’axe de la vis. de 120 mm à 600 mm.</translation>
    </message>
    <message>
        <source>Length, width and thickness of each piece's blank, in mm.</source>
        <translation>Longueur, largeur et épaisseur de l'ébauche de chaque pièce, en mm.</translation>
    </message>
    <message>
        <source>Long edges of the slats: ripped plumb to the stiles' faces, or left square.</source>
        <translation>Chants longs des lames : sciés d'aplomb au nu des montants, ou laissés d'équerre.</translation>
    </message>
    <message>
        <source>Longest clear width that a slat may bridge without a mullion. 300 mm to 2000 mm.</source>
        <translation>Plus grande largeur libre qu'une lame peut franchir sans meneau. de 300 mm à 2000 mm.</translation>
    </message>
    <message>
        <source>Louvers</source>
        <translation>Lames</translation>
    </message>
    <message>
        <source>Mesh with battens on the inner face of each panel.</source>
        <translation>Toile et liteaux sur la face intérieure de chaque panneau.</translation>
    </message>
    <message>
        <source>Millimetres are rounded to this on the report. 0.1 to 5.0.</source>
        <translation>Les millimètres sont arrondis à ce pas dans le rapport. de 0.1 à 5.0.</translation>
    </message>
    <message>
        <source>Moisture of the batten stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des liteaux), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the cladding stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois du bardage), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the corner board stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des planches d'angle), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the fascia stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des bandeaux), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the frame stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois de cadre), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the king post stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois du poinçon), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the plate stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois de sablière), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the rafter stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des chevrons), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the ridge stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois de faîtage), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the ring stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois du larmier), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the sheathing stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (panneau du voligeage), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the slat stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des lames), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the soffit stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois de la sous-face), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the stile stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois des montants), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Moisture of the trim stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Humidité mesurée (bois de l'habillage), en pour cent de la masse anhydre ; les poids en découlent. de 4.0 à 40.0. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Most wood left on a leg's foot below the slopes in use, plumb.</source>
        <translation>Plus grand surplus de bois laissé au bas d'un pied sous les versants retenus, d'aplomb.</translation>
    </message>
    <message>
        <source>Name of the job, as it stands in the report's title block.</source>
        <translation>Nom du chantier, tel qu'il figure dans le cartouche du rapport.</translation>
    </message>
    <message>
        <source>Narrowest place on the way to the roof: a hatch, a door, between the rails of a scaffold. 300 mm to 5000 mm. 0: not given.</source>
        <translation>Endroit le plus étroit sur le chemin du toit : une trappe, une porte, entre les garde-corps d'un échafaudage. de 300 mm à 5000 mm. 0: non donné.</translation>
    </message>
    <message>
        <source>Net free area of the louvers: head and sill gaps are closed, screen taken off.</source>
        <translation>Section libre des lames : jours de tête et d'appui fermés, grillage déduit.</translation>
    </message>
    <message>
        <source>Net free area wanted from each vent, in square metres. 0.0 to 100.0. 0: by the floor or by the building's width, if either is given.</source>
        <translation>Section libre voulue de chaque lanterneau, en mètres carrés. de 0.0 à 100.0. 0: d'après le sol ou la largeur du bâtiment, si l'un est donné.</translation>
    </message>
    <message>
        <source>Not made here: bought, used again, or not wanted. Its pieces are in no model, count or weight, the report lists it as left out, and its neighbours stay as they are.</source>
        <translation>N'est pas faite ici : achetée, réemployée, ou non voulue. Ses éléments ne sont dans aucun modèle, nombre ou poids, le rapport la donne comme omise, et ses voisines restent comme elles sont.</translation>
    </message>
    <message>
        <source>Number of sides of the plan: 4, 6 or 8. 4 to 8.</source>
        <translation>Nombre de côtés du plan : 4, 6 ou 8. de 4 à 8.</translation>
    </message>
    <message>
        <source>Number of the arrangement of these properties.</source>
        <translation>Numéro de la disposition de ces propriétés.</translation>
    </message>
    <message>
        <source>Offcuts that you have already, as stock and lengths: 2x4: 1200, 900; 1x6: 2 m. A bare number is in mm.</source>
        <translation>Chutes que vous avez déjà, sous la forme bois et longueurs : 2x4: 1200, 900; 1x6: 2 m. Un nombre seul est en mm.</translation>
    </message>
    <message>
        <source>On a roof that is drawn: how far along the ridge the vent's axis stands from the end that FromEnd names. Several vents stand by EndDistance.</source>
        <translation>Sur un toit dessiné : distance, le long du faîtage, de l'axe du lanterneau au bout que nomme FromEnd. Plusieurs lanterneaux se placent d'après EndDistance.</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Ouverture</translation>
    </message>
    <message>
        <source>Paper that the report is laid out for.</source>
        <translation>Papier pour lequel le rapport est mis en page.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Part, yours to set</source>
        <translation>Pièce, à vous de régler</translation>
    </message>
    <message>
        <source>Pieces of the parts that are left out: not made here, and in no other count.</source>
        <translation>Éléments des pièces omises : non faits ici, et dans aucun autre nombre.</translation>
    </message>
    <message>
        <source>Pieces to cut for all vents on the ridge.</source>
        <translation>Pièces à couper pour tous les lanterneaux du faîtage.</translation>
    </message>
    <message>
        <source>Pieces to cut.</source>
        <translation>Pièces à couper.</translation>
    </message>
    <message>
        <source>Pitch of a flared roof's eave, below the break. 5.00° to 60.00°. 0: half the faces' pitch.</source>
        <translation>Pente de l'égout d'un toit à coyau, sous la brisure. de 5.00° à 60.00°. 0: la moitié de la pente des faces.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, over its short sides, where it is another than the long faces'; their overhang follows, so that all eaves are level. 5.00° to 75.00°. 0: as the long faces.</source>
        <translation>Pente des croupes d'un rectangle, au-dessus de ses petits côtés, si elle diffère de celle des longues faces ; leur débord en découle, pour que tous les égouts soient de niveau. de 5.00° à 75.00°. 0: comme les longues faces.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, where it differs; else 0.</source>
        <translation>Pente des croupes d'un rectangle, si elle diffère ; sinon 0.</translation>
    </message>
    <message>
        <source>Pitch of the barn's left slope that the vent is made to.</source>
        <translation>Pente du versant gauche de la grange pour laquelle le lanterneau est fait.</translation>
    </message>
    <message>
        <source>Pitch of the barn's right slope that the vent is made to.</source>
        <translation>Pente du versant droit de la grange pour laquelle le lanterneau est fait.</translation>
    </message>
    <message>
        <source>Pitch of the faces below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Pente des faces sous la brisure d'un toit à coyau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your left when you look along the vent's +X axis, from the level. 0.00° to less than 75.00°.</source>
        <translation>Pente du versant à votre gauche quand vous regardez le long de l'axe +X du lanterneau, depuis l'horizontale. de 0.00° à moins de 75.00°.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your right when you look along the vent's +X axis, from the level. 0.00° to less than 75.00°.</source>
        <translation>Pente du versant à votre droite quand vous regardez le long de l'axe +X du lanterneau, depuis l'horizontale. de 0.00° à moins de 75.00°.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces from the level (not the slope of its hips). 5.00° to 70.00°.</source>
        <translation>Pente des faces du toit du lanterneau depuis l'horizontale (non celle de ses arêtes). de 5.00° à 70.00°.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces, which is not the slope of its hips.</source>
        <translation>Pente des faces du toit du lanterneau, qui n'est pas celle de ses arêtes.</translation>
    </message>
    <message>
        <source>Plumb depth of the rafters' tails at the fascia. 60 mm to 300 mm.</source>
        <translation>Hauteur d'aplomb des abouts de chevrons au bandeau. de 60 mm à 300 mm.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your left, at the vent's +X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Chute d'aplomb depuis le niveau du point le plus haut du faîtage sous le lanterneau jusqu'à la couverture à votre gauche, au bout +X du lanterneau, quand vous regardez le long de +X : à l'angle du rectangle autour du plan, hors bardage. Donnez les quatre chutes ou aucune ; les pentes découlent alors de la plus petite chute de chaque versant. de 0.1 mm à 5000 mm. 0: non mesuré.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your left, at the vent's −X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Chute d'aplomb depuis le niveau du point le plus haut du faîtage sous le lanterneau jusqu'à la couverture à votre gauche, au bout −X du lanterneau, quand vous regardez le long de +X : à l'angle du rectangle autour du plan, hors bardage. Donnez les quatre chutes ou aucune ; les pentes découlent alors de la plus petite chute de chaque versant. de 0.1 mm à 5000 mm. 0: non mesuré.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your right, at the vent's +X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Chute d'aplomb depuis le niveau du point le plus haut du faîtage sous le lanterneau jusqu'à la couverture à votre droite, au bout +X du lanterneau, quand vous regardez le long de +X : à l'angle du rectangle autour du plan, hors bardage. Donnez les quatre chutes ou aucune ; les pentes découlent alors de la plus petite chute de chaque versant. de 0.1 mm à 5000 mm. 0: non mesuré.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your right, at the vent's −X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Chute d'aplomb depuis le niveau du point le plus haut du faîtage sous le lanterneau jusqu'à la couverture à votre droite, au bout −X du lanterneau, quand vous regardez le long de +X : à l'angle du rectangle autour du plan, hors bardage. Donnez les quatre chutes ou aucune ; les pentes découlent alors de la plus petite chute de chaque versant. de 0.1 mm à 5000 mm. 0: non mesuré.</translation>
    </message>
    <message>
        <source>Plumb height of the cladding's foot above the roof covering. 0 mm to 100 mm.</source>
        <translation>Hauteur d'aplomb du bas du bardage au-dessus de la couverture. de 0 mm à 100 mm.</translation>
    </message>
    <message>
        <source>Plumb height of the roof sheathing's underside above the plate's outer edge. 20 mm to 400 mm. 0: so that no rafter is notched deeper than a third.</source>
        <translation>Hauteur d'aplomb du dessous du voligeage au-dessus du bord extérieur de la sablière. de 20 mm à 400 mm. 0: pour qu'aucun chevron ne soit entaillé de plus d'un tiers.</translation>
    </message>
    <message>
        <source>Remarks of your own, printed on the report's first page.</source>
        <translation>Vos propres remarques, imprimées à la première page du rapport.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Revision of the model, as it stands in the report's title block.</source>
        <translation>Révision du modèle, telle qu'elle figure dans le cartouche du rapport.</translation>
    </message>
    <message>
        <source>Ridge boards, rafters and others that are drawn and must not be cut: each takes away what lies plumb over or under it.</source>
        <translation>Pannes faîtières, chevrons et autres qui sont dessinés et ne doivent pas être coupés : chacun retire ce qui est d'aplomb au-dessus ou au-dessous de lui.</translation>
    </message>
    <message>
        <source>Ridge piece of a rectangle's or a gable's roof. Empty: the list's usual stock for this use.</source>
        <translation>Pièce de faîtage du toit d'un rectangle ou d'un toit à pignons. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Roof sheathing. Empty: the list's usual stock for this use.</source>
        <translation>Voligeage. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Rangée</translation>
    </message>
    <message>
        <source>Screen mesh. Empty: the list's usual stock for this use.</source>
        <translation>Toile du grillage. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Share of the opening that the mesh leaves free (1/4 in hardware cloth 1.0, 1/8 in mesh 0.8). 0.2 to 1.0.</source>
        <translation>Part de l'ouverture que la toile laisse libre (grillage de 1/4 de pouce 1,0, toile de 1/8 de pouce 0,8). de 0.2 à 1.0.</translation>
    </message>
    <message>
        <source>Sheathing's underside above the plate's outer edge, plumb.</source>
        <translation>Dessous du voligeage au-dessus du bord extérieur de la sablière, d'aplomb.</translation>
    </message>
    <message>
        <source>Sheet cladding, or upright boards with a gap.</source>
        <translation>Bardage en panneaux, ou planches verticales avec un jeu.</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Atelier</translation>
    </message>
    <message>
        <source>Shop drawings on the next larger paper: A3 for A4, Tabloid for Letter.</source>
        <translation>Dessins d’atelier sur le papier de taille supérieure : A3 pour A4, Tabloid pour Letter.</translation>
    </message>
    <message>
        <source>Shortest offcut that you keep. 50 mm to 3000 mm.</source>
        <translation>Chute la plus courte que vous gardez. de 50 mm à 3000 mm.</translation>
    </message>
    <message>
        <source>Shortest piece that you let your saw cut without a holder. 50 mm to 600 mm.</source>
        <translation>Pièce la plus courte que vous laissez couper à votre scie sans support. de 50 mm à 600 mm.</translation>
    </message>
    <message>
        <source>Side of the opening to cut in the roof, level; across the ridge.</source>
        <translation>Côté de l'ouverture à couper dans le toit, de niveau ; en travers du faîtage.</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Slats and sills. Empty: the list's usual stock for this use.</source>
        <translation>Lames et appuis. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Slats in each gable end, without the sill.</source>
        <translation>Lames de chaque pignon, sans l'appui.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill.</source>
        <translation>Lames d'un panneau, sans l'appui.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill. 1 to 60. 0: the fewest that hide the sky at the rain angle.</source>
        <translation>Lames d'un panneau, sans l'appui. de 1 à 60. 0: le moins qui cache le ciel sous l'angle de pluie.</translation>
    </message>
    <message>
        <source>Slope of the drip ring from the level. 10.00° to 45.00°. 0: the slats' slope, 45° at most.</source>
        <translation>Pente du larmier depuis l'horizontale. de 10.00° à 45.00°. 0: la pente des lames, 45° au plus.</translation>
    </message>
    <message>
        <source>Slope of the hips below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Pente des arêtes sous la brisure d'un toit à coyau ; 0 s'il n'en a pas.</translation>
    </message>
    <message>
        <source>Slope of the hips, which is not the pitch of the faces; 0 for a gable roof.</source>
        <translation>Pente des arêtes, qui n'est pas celle des faces ; 0 pour un toit à pignons.</translation>
    </message>
    <message>
        <source>Slope of the sill from the level. 10.00° to 60.00°. 0: the slats' slope.</source>
        <translation>Pente de l'appui depuis l'horizontale. de 10.00° à 60.00°. 0: la pente des lames.</translation>
    </message>
    <message>
        <source>Slope of the slats from the level. 25.00° to 60.00°.</source>
        <translation>Pente des lames depuis l'horizontale. de 25.00° à 60.00°.</translation>
    </message>
    <message>
        <source>Slope of the vent's hips from the level; if it is given, the faces' pitch follows from it and the roof pitch is left aside. 4.00° to 65.00°. 0: from the faces' pitch.</source>
        <translation>Pente des arêtes du lanterneau depuis l'horizontale ; si elle est donnée, la pente des faces en découle et la pente du toit est laissée de côté. de 4.00° à 65.00°. 0: d'après la pente des faces.</translation>
    </message>
    <message>
        <source>Soffit. Empty: the list's usual stock for this use.</source>
        <translation>Sous-face. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Square metres of floor for one of free area: 150 by the usual rule for attics, 300 under its conditions. 20.0 to 1000.0.</source>
        <translation>Mètres carrés de sol pour un de section libre : 150 selon la règle usuelle des combles, 300 sous ses conditions. de 20.0 à 1000.0.</translation>
    </message>
    <message>
        <source>Square metres that a litre of primer or paint covers in one coat, as its tin says. 2.0 to 20.0.</source>
        <translation>Mètres carrés couverts en une couche par un litre d’apprêt ou de peinture, comme l’indique le pot. de 2.0 à 20.0.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étage</translation>
    </message>
    <message>
        <source>Steepest sight line, rising inward, that the slats must still block. 0.00° to 45.00°.</source>
        <translation>Ligne de vue la plus raide, montant vers l'intérieur, que les lames doivent encore cacher. de 0.00° à 45.00°.</translation>
    </message>
    <message>
        <source>Stiles and head rails of the louver panels. Empty: the list's usual stock for this use.</source>
        <translation>Montants et traverses de tête des panneaux à lames. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>Stock for this kind of part alone, by its name in the vent's stock list: another wood or length of the form and the size of the vent's own. Empty: the vent's.</source>
        <translation>Bois pour cette seule sorte de pièce, par son nom dans la liste des bois du lanterneau : un autre bois ou une autre longueur, de la forme et de la dimension de celui du lanterneau. Vide : celui du lanterneau.</translation>
    </message>
    <message>
        <source>Stock list: us, eu, or the path of a list of your own.</source>
        <translation>Liste des bois : us, eu, ou le chemin d'une liste à vous.</translation>
    </message>
    <message>
        <source>Stock that the pieces are cut from.</source>
        <translation>Bois dans lequel les pièces sont coupées.</translation>
    </message>
    <message>
        <source>The clear opening against the louvers.</source>
        <translation>L'ouverture libre comparée aux lames.</translation>
    </message>
    <message>
        <source>The description in the tree that the last recompute wrote.</source>
        <translation>La description dans l'arborescence que le dernier recalcul a écrite.</translation>
    </message>
    <message>
        <source>The kind of part, as reports and references call it.</source>
        <translation>La sorte de pièce, telle que les rapports et les renvois la nomment.</translation>
    </message>
    <message>
        <source>The kind's number in its stage's marks.</source>
        <translation>Le numéro de la sorte dans les repères de son étage.</translation>
    </message>
    <message>
        <source>The least of louvers, throat and roof opening.</source>
        <translation>La plus petite section parmi lames, gorge et ouverture du toit.</translation>
    </message>
    <message>
        <source>The mark of each piece.</source>
        <translation>Le repère de chaque pièce.</translation>
    </message>
    <message>
        <source>The name of each piece, in the order of the shape's solids.</source>
        <translation>Le nom de chaque pièce, dans l'ordre des solides de la forme.</translation>
    </message>
    <message>
        <source>The objects that the roof is read from.</source>
        <translation>Les objets sur lesquels le toit est lu.</translation>
    </message>
    <message>
        <source>The opening of another vent that was cut into the same roof before this one.</source>
        <translation>L'ouverture d'un autre lanterneau, coupée dans le même toit avant celle-ci.</translation>
    </message>
    <message>
        <source>The roof is read again when one of these changes.</source>
        <translation>Le toit est lu de nouveau quand l'un d'eux change.</translation>
    </message>
    <message>
        <source>The roof's planes and ridge, by which it is found again.</source>
        <translation>Les plans et le faîtage du toit, auxquels on le retrouve.</translation>
    </message>
    <message>
        <source>The stage, as reports and references call it.</source>
        <translation>L'étage, tel que les rapports et les renvois le nomment.</translation>
    </message>
    <message>
        <source>The vent that the opening is cut for, with all others of its row.</source>
        <translation>Le lanterneau pour lequel l'ouverture est coupée, avec tous les autres de sa rangée.</translation>
    </message>
    <message>
        <source>The vent that the part belongs to.</source>
        <translation>Le lanterneau auquel la pièce appartient.</translation>
    </message>
    <message>
        <source>The vent that the stage belongs to.</source>
        <translation>Le lanterneau auquel l'étage appartient.</translation>
    </message>
    <message>
        <source>The vent that this one is alike to, the first of the row.</source>
        <translation>Le lanterneau auquel celui-ci est semblable, le premier de la rangée.</translation>
    </message>
    <message>
        <source>The vent whose cut list this is.</source>
        <translation>Le lanterneau dont c'est la liste de coupe.</translation>
    </message>
    <message>
        <source>Thickest stock that your saw cuts with its blade upright. 20 mm to 300 mm.</source>
        <translation>Bois le plus épais que votre scie coupe lame d'aplomb. de 20 mm à 300 mm.</translation>
    </message>
    <message>
        <source>Thickness of the batten stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des liteaux). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the cladding stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois du bardage). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the corner board stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des planches d'angle). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the fascia stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des bandeaux). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the frame stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois de cadre). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the king post stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois du poinçon). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the plate stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois de sablière). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the rafter stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des chevrons). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the ridge board under the opening, which is never cut. 0: none. A vent on one slope has none.</source>
        <translation>Épaisseur de la panne faîtière sous l'ouverture, qui n'est jamais coupée. 0 : aucune. Un lanterneau sur un versant n'en a pas.</translation>
    </message>
    <message>
        <source>Thickness of the ridge stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois de faîtage). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the ring stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois du larmier). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the screen stock, as measured. 0.2 mm to 10 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (toile du grillage). de 0.2 mm à 10 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the sheathing stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (panneau du voligeage). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the slat stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des lames). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the soffit stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois de la sous-face). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the stile stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois des montants). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Thickness of the trim stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Épaisseur mesurée (bois de l'habillage). de 3 mm à 300 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Top of the base above the ridge.</source>
        <translation>Haut de la base au-dessus du faîtage.</translation>
    </message>
    <message>
        <source>Trade's rule for the width: inches of vent for each foot of its share of the ridge (1.25 is 104 mm per metre). 1.0 to 1.5.</source>
        <translation>Règle du métier pour la largeur : pouces de lanterneau par pied de sa part du faîtage (1,25 fait 104 mm par mètre). de 1.0 à 1.5.</translation>
    </message>
    <message>
        <source>Trim and frieze of the louver stage. Empty: the list's usual stock for this use.</source>
        <translation>Habillage et frise de l'étage à lames. Vide : le bois usuel de la liste pour cet emploi.</translation>
    </message>
    <message>
        <source>Unit of lengths on the report.</source>
        <translation>Unité des longueurs dans le rapport.</translation>
    </message>
    <message>
        <source>Vent roof</source>
        <translation>Toit du lanterneau</translation>
    </message>
    <message>
        <source>Weight of all vents on the ridge together. In kg.</source>
        <translation>Poids de tous les lanterneaux du faîtage ensemble. En kilogrammes.</translation>
    </message>
    <message>
        <source>Weight of the base. In kg.</source>
        <translation>Poids de la base. En kilogrammes.</translation>
    </message>
    <message>
        <source>Weight of the louver stage. In kg.</source>
        <translation>Poids de l'étage à lames. En kilogrammes.</translation>
    </message>
    <message>
        <source>Weight of the parts that are left out, as drawn; no other weight has it. In kg.</source>
        <translation>Poids des pièces omises, telles que dessinées ; il n'est dans aucun autre poids. En kilogrammes.</translation>
    </message>
    <message>
        <source>Weight of the roof stage, without its covering. In kg.</source>
        <translation>Poids de l'étage du toit, sans sa couverture. En kilogrammes.</translation>
    </message>
    <message>
        <source>Weight of the vent, without covering, flashing and paint. In kg.</source>
        <translation>Poids du lanterneau, sans couverture, solins ni peinture. En kilogrammes.</translation>
    </message>
    <message>
        <source>What closes the gables: cladding, or slats as in the panels.</source>
        <translation>Ce qui ferme les pignons : un bardage, ou des lames comme dans les panneaux.</translation>
    </message>
    <message>
        <source>What each person is to lift at most, in kg. 5.0 to 50.0. 0: 13.6, by the lifting equation for a stage held before one.</source>
        <translation>Ce que chaque personne doit lever au plus, en kg. de 5.0 à 50.0. 0: 13,6, selon l'équation de levage pour un étage tenu devant soi.</translation>
    </message>
    <message>
        <source>What the last recompute found.</source>
        <translation>Ce que le dernier recalcul a trouvé.</translation>
    </message>
    <message>
        <source>What the parts' colours tell apart: the stock that they are cut from, or their kinds. A part that you have coloured yourself keeps its colour.</source>
        <translation>Ce que distinguent les couleurs des pièces : le bois dans lequel elles sont coupées, ou leurs sortes. Une pièce que vous avez colorée vous-même garde sa couleur.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, left slope.</source>
        <translation>Ce que l'erreur de pente ouvre au pied, versant gauche.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, right slope.</source>
        <translation>Ce que l'erreur de pente ouvre au pied, versant droit.</translation>
    </message>
    <message>
        <source>What the shape was made from.</source>
        <translation>Ce dont la forme a été faite.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot, a piece or a length: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Gives a cost sheet; stock with a price for every length is bought at the least cost.</source>
        <translation>Ce que demande le négoce, dans une seule monnaie, par bois et prix du mètre, du pied, de la pièce ou d'une longueur : 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Donne un état des coûts ; le bois dont chaque longueur a un prix est acheté au moindre coût.</translation>
    </message>
    <message>
        <source>What was hidden when the opening was made.</source>
        <translation>Ce qui a été masqué quand l'ouverture a été faite.</translation>
    </message>
    <message>
        <source>What you cut off each end of a new stick, with the saw cut, to have it sound and square. 0 mm to 300 mm.</source>
        <translation>Ce que vous coupez à chaque bout d'une barre neuve, trait de scie compris, pour qu'il soit sain et d'équerre. de 0 mm à 300 mm.</translation>
    </message>
    <message>
        <source>Where AlongRidge counts from: the middle of the ridge (towards the front), its back end, or its front end, which the vent's +X axis looks at.</source>
        <translation>D'où compte AlongRidge : du milieu du faîtage (vers l'avant), de son bout arrière, ou de son bout avant, que regarde l'axe +X du lanterneau.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis along the ridge.</source>
        <translation>Où les chutes sont lues : depuis l'axe du lanterneau, le long du faîtage.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis square to the ridge.</source>
        <translation>Où les chutes sont lues : depuis l'axe du lanterneau, d'équerre au faîtage.</translation>
    </message>
    <message>
        <source>Where each piece's board frame stands in the vent.</source>
        <translation>Où se tient dans le lanterneau le repère de la planche de chaque pièce.</translation>
    </message>
    <message>
        <source>Where the vent stood when it last took its seat.</source>
        <translation>Où était le lanterneau quand il a pris place pour la dernière fois.</translation>
    </message>
    <message>
        <source>Whether a side or a corner of the plan looks along the ridge.</source>
        <translation>Si c'est un côté ou un angle du plan qui regarde le long du faîtage.</translation>
    </message>
    <message>
        <source>Whether the ridge board and the boards of RidgeBoards are left standing in the opening, or an opening that would cut one is refused.</source>
        <translation>Si la panne faîtière et les bois de RidgeBoards restent debout dans l'ouverture, ou si une ouverture qui en couperait un est refusée.</translation>
    </message>
    <message>
        <source>Whether the ridge of a gable roof runs along the barn's or across it.</source>
        <translation>Si le faîtage d'un toit à pignons court le long de celui de la grange ou en travers.</translation>
    </message>
    <message>
        <source>Whether the vent stands astride the ridge, or as a curb wholly on the left slope (a flat roof is a slope of 0°); then heights count from the roof under the vent's axis.</source>
        <translation>Si le lanterneau est à cheval sur le faîtage, ou comme une costière tout entier sur le versant gauche (un toit plat est un versant de 0°) ; les hauteurs comptent alors depuis le toit sous l'axe du lanterneau.</translation>
    </message>
    <message>
        <source>Which of the three is the least.</source>
        <translation>Laquelle des trois est la plus petite.</translation>
    </message>
    <message>
        <source>Which vent of the row this is, counted from the ridge's −X end.</source>
        <translation>Le rang de ce lanterneau dans la rangée, compté depuis le bout −X du faîtage.</translation>
    </message>
    <message>
        <source>Widest clear distance between rafters that the roof sheathing may bridge. 200 mm to 1500 mm.</source>
        <translation>Plus grande distance libre entre chevrons que le voligeage peut franchir. de 200 mm à 1500 mm.</translation>
    </message>
    <message>
        <source>Widest spacing of the slats, plumb; it leads where no number of slats is given. 20 mm to 400 mm. 0: by the number of slats.</source>
        <translation>Plus grand écartement des lames, d'aplomb ; il décide quand aucun nombre de lames n'est donné. de 20 mm à 400 mm. 0: d'après le nombre de lames.</translation>
    </message>
    <message>
        <source>Widest stock that your saw crosscuts. 80 mm to 3000 mm.</source>
        <translation>Bois le plus large que votre scie tronçonne. de 80 mm à 3000 mm.</translation>
    </message>
    <message>
        <source>Width of the barn's ridge cap, level, both slopes together. 0 mm to 1000 mm.</source>
        <translation>Largeur de la faîtière de la grange, de niveau, les deux versants ensemble. de 0 mm à 1000 mm.</translation>
    </message>
    <message>
        <source>Width of the batten stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des liteaux). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the building across the ridge; with the ridge length it gives the area of an open ridge, 2 in for each 10 ft of width. 0 mm to 100000 mm. 0: not given.</source>
        <translation>Largeur du bâtiment en travers du faîtage ; avec la longueur du faîtage elle donne la section d'un faîtage ouvert, 2 pouces par 10 pieds de largeur. de 0 mm à 100000 mm. 0: non donné.</translation>
    </message>
    <message>
        <source>Width of the cladding stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois du bardage). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the corner board stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des planches d'angle). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the fascia stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des bandeaux). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the frame stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois de cadre). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the king post stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois du poinçon). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the plate stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois de sablière). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the rafter stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des chevrons). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the ridge stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois de faîtage). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the ring stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois du larmier). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the slat stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des lames). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the soffit stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois de la sous-face). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the stile stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois des montants). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the trim stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Largeur mesurée (bois de l'habillage). de 8 mm à 3000 mm. 0: selon la liste des bois.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding.</source>
        <translation>Largeur du lanterneau hors bardage.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding. 300 mm to 3600 mm. 0: by the width rule from the ridge length.</source>
        <translation>Largeur du lanterneau hors bardage. de 300 mm à 3600 mm. 0: d'après la règle de largeur et la longueur du faîtage.</translation>
    </message>
    <message>
        <source>Width of the vent's roof over the fascia; of a rectangle's the smaller.</source>
        <translation>Largeur du toit du lanterneau hors bandeaux ; d'un rectangle, la plus petite.</translation>
    </message>
    <message>
        <source>Width of your saw's cut. 0.5 mm to 8 mm.</source>
        <translation>Largeur du trait de votre scie. de 0.5 mm à 8 mm.</translation>
    </message>
    <message>
        <source>Width that a corner board shows on each face. 40 mm to 300 mm. 0: the corner board stock's width, 140 mm at most.</source>
        <translation>Largeur qu'une planche d'angle montre sur chaque face. de 40 mm à 300 mm. 0: la largeur du bois des planches d'angle, 140 mm au plus.</translation>
    </message>
    <message>
        <source>Width that a corner post shows on each face. 40 mm to 400 mm. 0: the frame stock's width; 0.15 of a side at most with 6 or 8 sides.</source>
        <translation>Largeur qu'un poteau d'angle montre sur chaque face. de 40 mm à 400 mm. 0: la largeur du bois de cadre ; au plus 0,15 d'un côté avec 6 ou 8 côtés.</translation>
    </message>
    <message>
        <source>With several vents: from each end of the unbroken ridge to the axis of the nearest vent; between these the vents are evenly spaced. One vent stands in the middle. 150 mm to 250000 mm. 0: half a vent's share of the ridge.</source>
        <translation>Avec plusieurs lanterneaux : de chaque bout du faîtage continu à l'axe du lanterneau le plus proche ; entre eux les lanterneaux sont régulièrement espacés. Un seul se tient au milieu. de 150 mm à 250000 mm. 0: la demi-part de faîtage d'un lanterneau.</translation>
    </message>
    <message>
        <source>Wood left on the legs' feet, plumb, to scribe them to a twisted roof or a ridge that sags. 0 mm to 80 mm.</source>
        <translation>Bois laissé au bas des pieds, d'aplomb, pour les tracer sur un toit gauche ou un faîtage qui fléchit. de 0 mm à 80 mm.</translation>
    </message>
</context>
<context>
    <name>Louverwright_Compare</name>
    <message>
        <source>Compare with an earlier report</source>
        <translation>Comparer avec un rapport antérieur</translation>
    </message>
    <message>
        <source>List which lengths and angles changed since a report was written (its cuts.json), and which pieces already cut can be kept.</source>
        <translation>Lister les longueurs et les angles qui ont changé depuis qu'un rapport a été écrit (son cuts.json), et les pièces déjà coupées qui peuvent servir.</translation>
    </message>
</context>
<context>
    <name>Louverwright_CutList</name>
    <message>
        <source>Cut list in a spreadsheet</source>
        <translation>Liste de coupe dans une feuille de calcul</translation>
    </message>
    <message>
        <source>Write the vent's cut list into a spreadsheet in the document, or bring it up to date; what you have written right of it stays with its cut.</source>
        <translation>Écrire la liste de coupe du lanterneau dans une feuille de calcul du document, ou la mettre à jour ; ce que vous avez écrit à sa droite reste avec sa coupe.</translation>
    </message>
</context>
<context>
    <name>Louverwright_CutReport</name>
    <message>
        <source>Cut report</source>
        <translation>Rapport de coupe</translation>
    </message>
    <message>
        <source>Write the vent's cut list, saw settings and drawings to a folder: HTML, PDF, CSV and JSON.</source>
        <translation>Écrire dans un dossier la liste de coupe, les réglages de scie et les dessins du lanterneau : HTML, PDF, CSV et JSON.</translation>
    </message>
</context>
<context>
    <name>Louverwright_EditVent</name>
    <message>
        <source>Change the dimensions of the selected vent in a panel, with a picture of what they make.</source>
        <translation>Modifier dans un panneau les dimensions du lanterneau choisi, avec une image du résultat.</translation>
    </message>
    <message>
        <source>Edit vent</source>
        <translation>Modifier le lanterneau</translation>
    </message>
</context>
<context>
    <name>Louverwright_Mend</name>
    <message>
        <source>A part came out wrong</source>
        <translation>Une pièce est ratée</translation>
    </message>
    <message>
        <source>Give the real size of a piece that was cut wrong, or say that it is lost: see whether it may stay, what packing fills the gap, what to take off, or which parameter lets the vent follow it.</source>
        <translation>Donner la dimension réelle d'une pièce mal coupée, ou dire qu'elle est perdue : voir si elle peut rester, quelle cale comble le jeu, ce qu'il faut retirer, ou quel paramètre la fait suivre par le lanterneau.</translation>
    </message>
</context>
<context>
    <name>Louverwright_NewVent</name>
    <message>
        <source>Make a louvered vent in the active document, with its dimensions in a panel and a picture in the 3D view.</source>
        <translation>Faire un lanterneau à lames dans le document actif, avec ses dimensions dans un panneau et une image dans la vue 3D.</translation>
    </message>
    <message>
        <source>New vent</source>
        <translation>Nouveau lanterneau</translation>
    </message>
</context>
<context>
    <name>Louverwright_Papers</name>
    <message>
        <source>Choose which sets of papers to write to a folder, such as the cut report, the lift plan or the checks.</source>
        <translation>Choisir les jeux de documents à écrire dans un dossier, comme le rapport de coupe, le plan de levage ou les contrôles.</translation>
    </message>
    <message>
        <source>Papers for the shop</source>
        <translation>Documents pour l'atelier</translation>
    </message>
</context>
<context>
    <name>Louverwright_PartsAndMarks</name>
    <message>
        <source>List every mark as it stands in the report and find its pieces in the model, or the mark of a piece that is picked.</source>
        <translation>Lister tous les repères tels qu'ils figurent dans le rapport et trouver leurs pièces dans le modèle, ou le repère d'une pièce choisie.</translation>
    </message>
    <message>
        <source>Parts and marks</source>
        <translation>Pièces et repères</translation>
    </message>
</context>
<context>
    <name>Louverwright_RoofOpening</name>
    <message>
        <source>Cut the rough opening for the selected vent into the roof that it stands on; the roof itself is kept, and hidden.</source>
        <translation>Couper l'ouverture brute du lanterneau choisi dans le toit qui le porte ; le toit lui-même est gardé, et masqué.</translation>
    </message>
    <message>
        <source>Roof opening</source>
        <translation>Ouverture du toit</translation>
    </message>
</context>
<context>
    <name>Louverwright_ShopDrawings</name>
    <message>
        <source>Draw the vent on TechDraw pages: general arrangement, a sheet a stage, sheets of parts; run again, the pages follow the model and keep what you added.</source>
        <translation>Dessine le lanterneau sur des pages TechDraw : ensemble, une feuille par étage, feuilles des pièces ; relancée, la commande met les pages à jour d’après le modèle et garde vos ajouts.</translation>
    </message>
    <message>
        <source>Shop drawings</source>
        <translation>Dessins d’atelier</translation>
    </message>
</context>
<context>
    <name>Louverwright_TakeApart</name>
    <message>
        <source>Pull the vent's stages and pieces apart in the 3D view, or take sides away to look in; closing puts all together.</source>
        <translation>Écarter dans la vue 3D les étages et les pièces du lanterneau, ou retirer des côtés pour regarder dedans ; à la fermeture tout se rassemble.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Écarter</translation>
    </message>
</context>
<context>
    <name>Louverwright_VentsAlongRidge</name>
    <message>
        <source>Show the vent as often as its property Vents says, spaced along its RidgeLength; those beyond that number are taken away.</source>
        <translation>Montrer le lanterneau autant de fois que le dit sa propriété Vents, réparti sur sa RidgeLength ; ceux qui dépassent ce nombre sont retirés.</translation>
    </message>
    <message>
        <source>Vents along the ridge</source>
        <translation>Lanterneaux le long du faîtage</translation>
    </message>
</context>
</TS>
