import { plugins } from '@citation-js/core';
import '@citation-js/plugin-csl';
import { noteStyle } from './src/citations/note-style.ts';
const config = plugins.config.get('@csl');
config.styles.add('whence', noteStyle);
const data=[{id:'r0',type:'document',title:'Declaration of <i>intention</i> no. 412 <script>',archive:"County Clerk's Office",'archive-place':'Houghton, Michigan',issued:{literal:'11 April 1871'}, note:'type: book\nfoo'},{id:'r1',type:'book',author:[{family:'Phelan',given:'Mary'}],title:'A history',publisher:'Smith',issued:{literal:'1880'},page:'3-5'}];
const e=config.engine(data,'whence','en-US','html');
e.opt.development_extensions.field_hack=false;
console.log(e.updateItems(['r0','r1']));
for (const id of ['r0','r1']) { console.log(JSON.stringify(e.makeCitationCluster([{id,position:0}]))); console.log(JSON.stringify(e.makeCitationCluster([{id,position:1}]))); }
console.log(JSON.stringify(e.makeBibliography(),null,1));
