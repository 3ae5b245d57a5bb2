BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Rename-Layer' {
    BeforeEach {
        $path = Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd')
        $file = Get-LayerFile $path
    }

    Context '-Match' {
        It 'changes only names that match, ignoring case' {
            $out = $file | Rename-Layer '^EYE (.)$' 'Iris $1'
            [object]::ReferenceEquals($out, $file) | Should -BeTrue
            ($file | Get-Layer).Name | Should -Be 'Figure', 'Arm L', 'Arm L', 'Head', 'Iris L', 'Iris L', 'Head', 'Body'
            $file.Changes.Count | Should -Be 2
        }

        It 'tells case with -CaseSensitive' {
            ($file | Rename-Layer -Match '^eye' -Replacement 'x' -CaseSensitive).PendingCount | Should -Be 0
        }

        It 'touches chosen layers only' {
            $file | Rename-Layer -Match '$' -Replacement ' x' -Kind Pixel -Side Left > $null
            ($file | Get-Layer -Name '* x').LayerNumber | Should -Be 3, 6
        }

        It 'ignores the culture of the session' {
            $culture = [cultureinfo]::CurrentCulture
            try {
                [cultureinfo]::CurrentCulture = 'tr-TR'
                ($file | Rename-Layer -Match 'FIGURE' -Replacement 'Doll' | Get-Layer -LayerNumber 1).Name | Should -Be 'Doll'
            }
            finally { [cultureinfo]::CurrentCulture = $culture }
        }

        It 'ends at once on a pattern that is none' {
            { $file | Rename-Layer '(' 'x' } | Should -Throw '*not a regular expression*' -ErrorId 'EditRefused*'
        }

        It 'has an error for a pattern without end, and goes on' {
            $file | Rename-Layer -LayerNumber 8 -NewName ('a' * 60 + '!') > $null
            $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $TestDrive 'other.psd'))
            $watch = [Diagnostics.Stopwatch]::StartNew()
            $result = Get-Streams { $file, $other | Rename-Layer -Match '^(a+)+$' -Replacement 'b' }
            $watch.Elapsed.TotalSeconds | Should -BeLessThan 20
            $result.Errors.Count | Should -Be 1
            $result.Output.Name | Should -Be 'other.psd'
        }
    }

    Context '-NewName' {
        It 'runs a script block for each layer, as $_' {
            $file | Rename-Layer -NewName { if ($_.Kind -eq 'Group') { "$($_.Name) group" } } > $null
            ($file | Get-Layer -Kind Group).Name | Should -Be 'Figure group', 'Arm L group', 'Head group', 'Eye L group'
            ($file | Get-Layer -Kind Pixel).Name | Should -Be 'Arm L', 'Eye L', 'Head', 'Body'
        }

        It 'sees the variables of whoever wrote the script block' {
            $suffix = ' 2'
            $file | Get-Layer -Name Body | Rename-Layer -NewName { $_.Name + $suffix } | ForEach-Object Name | Should -Be 'Body 2'
        }

        It 'refuses a file whose script block fails or gives two names, and leaves it' {
            $result = Get-Streams { $file | Rename-Layer -NewName { if ($_.Name -eq 'Body') { throw 'no body' } else { 'x' } } }
            $result.Output | Should -BeNullOrEmpty
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'ScriptFailed,*'
            $result.Errors[0] | Should -BeLike '*Figure/Body*no body*'
            (Get-Streams { $file | Rename-Layer -NewName { 'a', 'b' } }).Errors[0] | Should -BeLike '*2 values*'
            $file.PendingCount | Should -Be 0
        }

        It 'numbers in stack order, at {n} or at the end' {
            $file | Rename-Layer -Kind Pixel -NewName 'Part {n} of four' -Number -Start 8 -Width 2 > $null
            ($file | Get-Layer -Kind Pixel).Name | Should -Be 'Part 08 of four', 'Part 09 of four', 'Part 10 of four', 'Part 11 of four'
            $file | Get-Layer -Kind Pixel | Sort-Object LayerNumber -Descending | Rename-Layer -NewName 'Part' -Number > $null
            ($file | Get-Layer -Kind Pixel).Name | Should -Be 'Part 1', 'Part 2', 'Part 3', 'Part 4'
        }
    }

    Context '-Map' {
        It 'takes a hashtable of names and paths, and swaps' {
            $file | Rename-Layer -Map @{ 'Figure/Head' = 'Body'; Body = 'Head' } > $null
            ($file | Get-Layer).Name | Should -Be 'Figure', 'Arm L', 'Arm L', 'Body', 'Eye L', 'Eye L', 'Head', 'Head'
        }

        It 'takes a CSV file with Old and New, by path or as a file' {
            $csv = Join-Path $TestDrive 'names [1].csv'
            Set-Content -LiteralPath $csv -Encoding utf8 -Value 'Old,New', 'Body,胴体'
            ($file | Rename-Layer -Map (Get-Item -LiteralPath $csv) | Get-Layer -LayerNumber 8).Name | Should -Be '胴体'
            ($file | Rename-Layer -Map (Import-Csv -LiteralPath $csv) -Reverse | Get-Layer -LayerNumber 8).Name | Should -Be 'Body'
            ($file | Rename-Layer -Map ([WildcardPattern]::Escape($csv)) | Get-Layer -LayerNumber 8).Name | Should -Be '胴体'
        }

        It 'takes a CSV file with semicolons or tabs, as spreadsheets write them' {
            $csv = Join-Path $TestDrive 'sheet.csv'
            foreach ($delimiter in ';', "`t") {
                $name = "Torso, $([int][char]$delimiter)"
                Set-Content $csv -Encoding utf8BOM -Value "Old$($delimiter)New", "Body$delimiter$name"
                (Get-LayerFile $path | Rename-Layer -Map $csv | Get-Layer -LayerNumber 8).Name | Should -Be $name
            }
        }

        It 'undoes with an exported list of changes: <Fixture>' -ForEach @(
            @{ Fixture = 'names-japanese' }, @{ Fixture = 'names-duplicate' }, @{ Fixture = 'layer-ids' }, @{ Fixture = 'groups-nested' }
        ) {
            $path = Copy-Fixture $Fixture (Join-Path $TestDrive "$Fixture.psd")
            $before = (Get-Layer $path).LayerPath
            $csv = Join-Path $TestDrive "$Fixture.csv"
            $file = Get-LayerFile $path
            $file | Rename-Layer -NewName { '名前 "' + $_.LayerNumber + '", x' } | Rename-Layer -Match '名前' -Replacement '部品' | Save-LayerFile -InPlace > $null
            $file.Changes | Export-Csv $csv -Encoding utf8
            (Get-Layer $path).Name | Should -BeLike '部品*'
            Get-LayerFile $path | Rename-Layer -Map $csv -Reverse | Save-LayerFile -InPlace > $null
            (Get-Layer $path).LayerPath | Should -Be $before
        }

        It 'undoes with the changes themselves' {
            $before = ($file | Get-Layer).LayerPath
            $file | Rename-Layer -Match '^' -Replacement 'x' > $null
            $file | Rename-Layer -Map $file.Changes -Reverse > $null
            ($file | Get-Layer).LayerPath | Should -Be $before
        }

        It 'names the list that lacks a column' {
            Set-Content (Join-Path $TestDrive 'other.csv') 'From,To', 'Body,Torso'
            { Get-LayerFile $path | Rename-Layer -Map (Join-Path $TestDrive 'other.csv') } | Should -Throw '*other.csv*no column Old*'
        }

        It 'ends at once on a list that is none' {
            { $file | Rename-Layer -Map (Join-Path $TestDrive 'missing.csv') } | Should -Throw -ErrorId 'PathNotFound*'
            { $file | Rename-Layer -Map ([pscustomobject]@{ From = 'a'; To = 'b' }) } | Should -Throw '*Old and New*'
        }
    }

    Context '-Normalize' {
        BeforeEach {
            $file | Rename-Layer -LayerNumber 4 -NewName 'head_copy 3' > $null
            $file | Rename-Layer -LayerNumber 8 -NewName 'Zorp' > $null
        }

        It 'writes the profile''s form and lists what it does not understand' {
            $result = Get-Streams { $file | Rename-Layer -Normalize }
            $result.Output.Count | Should -Be 1
            [object]::ReferenceEquals($result.Output[0], $file) | Should -BeTrue
            ($file | Get-Layer).Name | Should -Be 'Figure', 'Arm L', 'Arm L', 'Head', 'Eye L', 'Eye L', 'Head', 'Zorp'
            $result.Warnings | Should -BeLike "*1 name is not understood and stays: 'Figure/Zorp'*"
            $pending = $file.PendingCount
            ($file | Rename-Layer -Normalize -WarningAction Ignore).PendingCount | Should -Be $pending
        }

        It 'takes a profile by name, and chosen layers' {
            $file | Get-Layer -Side Left | Rename-Layer -Normalize -Profile figure-ja > $null
            ($file | Get-Layer).Name | Should -Be 'Figure', '左腕', '左腕', 'head_copy 3', '左目', '左目', 'Head', 'Zorp'
            { $file | Rename-Layer -Normalize -Profile no-such-profile } | Should -Throw
        }

        It 'shows old and new, how sure and why with -Preview, as a table and as a list for -Map' {
            $rows = $file | Rename-Layer -Normalize -Preview -WarningAction Ignore
            $rows | ForEach-Object { "$($_.LayerNumber) $($_.Old) > $($_.New) $($_.Certainty)" } | Should -Be '4 head_copy 3 > Head 98', '8 Zorp >  0'
            $rows[0].Why | Should -BeLike "*only says that it is a copy*'head' is the part head*"
            $rows | Out-String -Width 120 | Should -Match '4 head_copy 3\s+Head\s+98\s+.copy 3. only says'
            $csv = Join-Path $TestDrive 'normal.csv'
            $rows | Export-Csv $csv -Encoding utf8
            ($file | Rename-Layer -Map $csv | Get-Layer -LayerNumber 1, 4, 8).Name | Should -Be 'Figure', 'Head', 'Zorp'
        }

        It 'gives the same numbers in all files with -Consistent, files or layers' {
            foreach ($whole in $true, $false) {
                $one, $two = 'one', 'two' | ForEach-Object { Get-LayerFile (Copy-Fixture ag-plain (Join-Path $TestDrive "$_.psd")) }
                $one | Rename-Layer -LayerNumber 1 -NewName bangs | Rename-Layer -LayerNumber 2 -NewName fringe > $null
                $two | Rename-Layer -LayerNumber 2 -NewName bangs | Rename-Layer -LayerNumber 1 -NewName fringe > $null
                if ($whole) { $out = $one, $two | Rename-Layer -Normalize -Consistent -WarningAction Ignore; $out.Name | Should -Be 'one.psd', 'two.psd' }
                else { $one, $two | Get-Layer | Rename-Layer -Normalize -Consistent -WarningAction Ignore > $null }
                ($one | Get-Layer -LayerNumber 1, 2).Name | Should -Be 'Hair front 1', 'Hair front 2'
                ($two | Get-Layer -LayerNumber 1, 2).Name | Should -Be 'Hair front 2', 'Hair front 1'
            }
        }
    }

    Context 'refuses' {
        It '<Name> for a file before anything changes' -ForEach @(
            @{ Name = 'an empty name'; Rename = @{ Match = '^Body$'; Replacement = '' } }
            @{ Name = 'a name of 256 units'; Rename = @{ Match = '^Body$'; Replacement = 'x' * 256 } }
            @{ Name = 'a duplicate'; Rename = @{ Match = '^(Body|Head)$'; Replacement = 'Same' } }
        ) {
            $result = Get-Streams { $file | Rename-Layer @Rename }
            $result.Output | Should -BeNullOrEmpty -Because 'a refused file is not passed on'
            $result.Errors.Count | Should -Be 1
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'EditRefused,*'
            $result.Errors[0].CategoryInfo.Category | Should -Be 'InvalidOperation'
            [object]::ReferenceEquals($result.Errors[0].TargetObject, $file) | Should -BeTrue
            $file.PendingCount | Should -Be 0
        }

        It 'saying of an empty name only that it is empty' {
            $result = Get-Streams { Get-LayerFile $path | Rename-Layer -Match '.*' -Replacement '' }
            $result.Errors[0] | Should -BeLike '*is empty*'
            $result.Errors[0] | Should -Not -BeLike '*AllowDuplicate*'
        }

        It 'naming each clash, unless duplicates are allowed' {
            $same = (Get-Streams { $file | Rename-Layer -Match '.+' -Replacement 'Same' }).Errors[0].ToString()
            foreach ($clash in 'Figure/Arm L', 'Figure/Head', 'Figure/Body', 'Figure/Head/Eye L', 'Figure/Head/Head') { $same | Should -BeLike "*'$clash'*" }
            ($file | Rename-Layer -Match '.+' -Replacement 'Same' -AllowDuplicate -WarningAction SilentlyContinue).PendingCount | Should -Be 8
        }

        It 'paths and files, saying what to begin with' {
            foreach ($wrong in 'hero.psd', (Get-Item $path), 7) {
                $result = Get-Streams { $wrong | Rename-Layer a b }
                $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALayer,*'
                $result.Errors[0] | Should -BeLike '*Get-LayerFile hero.psd | Rename-Layer*'
            }
        }

        It 'nothing at all, but not a pipeline that stayed empty' {
            { Rename-Layer a b } | Should -Throw '*Get-LayerFile hero.psd | Rename-Layer*' -ErrorId 'InputMissing*'
            (Get-Streams { $null | Rename-Layer a b }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'InputMissing,*'
            (Get-Streams { @() | Rename-Layer a b }).Errors | Should -BeNullOrEmpty
        }

        It 'facts from another process, once, saying where to work' {
            $facts = [Management.Automation.PSSerializer]::Deserialize([Management.Automation.PSSerializer]::Serialize(@(Get-Layer $path)))
            $result = Get-Streams { $facts | Rename-Layer a b }
            $result.Errors.Count | Should -Be 1
            $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'FactsOnly,*'
            $result.Errors[0] | Should -BeLike '*another process*machine with the file*'
        }

        It 'one file, and does the others' {
            $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $TestDrive 'other.psd'))
            $result = Get-Streams { $file, $other | Rename-Layer -LayerPath '*Head', '*Body' -NewName Same }
            $result.Errors.Count | Should -Be 1
            $result.Output.Name | Should -Be 'other.psd'
            $layers = Get-Streams { ($file | Get-Layer -Name Head, Body), ($other | Get-Layer -LayerNumber 2) | ForEach-Object { $_ } | Rename-Layer -NewName Again }
            $layers.Output.FilePath | Select-Object -Unique | Should -Be $other.Path
        }
    }

    Context 'looks first' {
        It 'gives path, old and new with -Preview, and changes nothing' {
            $rows = $file | Rename-Layer -Match ' L$' -Replacement '_l' -Preview
            $rows | ForEach-Object { "$($_.LayerNumber) $($_.LayerPath) $($_.Old) $($_.New)" } | Should -Be @(
                '2 Figure/Arm L Arm L Arm_l', '3 Figure/Arm L/Arm L Arm L Arm_l', '5 Figure/Head/Eye L Eye L Eye_l', '6 Figure/Head/Eye L/Eye L Eye L Eye_l')
            $file.PendingCount | Should -Be 0
            $file | Get-Layer | Rename-Layer -Match ' L$' -Replacement '_l' -Preview | Should -HaveCount 4
        }

        It 'takes a preview as a list' {
            $rows = $file | Rename-Layer -Match ' L$' -Replacement '_l' -Preview
            ($file | Rename-Layer -Map $rows | Get-Layer -Side Left).Name | Should -Be 'Arm_l', 'Arm_l', 'Eye_l', 'Eye_l'
        }

        It 'shows old and new with file and path, passes its input on and refuses all the same with -WhatIf' {
            $job = [powershell]::Create()
            try {
                $text = $job.AddScript({
                        param($Module, $Path)
                        Import-Module $Module
                        $file = Get-LayerFile $Path
                        $out = $file | Rename-Layer -Match '^Body$' -Replacement Torso -WhatIf
                        "$([object]::ReferenceEquals($out, $file)) $($file.PendingCount)"
                    }).AddArgument($env:LAYERTOOLS_MODULE).AddArgument($path).Invoke()
                $text | Should -Be 'True 0'
            }
            finally { $job.Dispose() }

            (Get-Streams { $file | Rename-Layer -Match '.+' -Replacement Same -WhatIf }).Errors.Count | Should -Be 1
            ($file | Get-Layer -Name Body | Rename-Layer -NewName Torso -WhatIf).Name | Should -Be 'Body'
        }

        It 'is a table' {
            $file | Rename-Layer -Match '^Body$' -Replacement Torso -Preview | Out-String -Width 120 | Should -Match '8\s+Figure/Body\s+Body\s+Torso'
            $file | Rename-Layer -Match '^Body$' -Replacement Torso > $null
            $file.Changes | Out-String -Width 120 | Should -Match '8\s+Figure/Body\s+Name\s+Body\s+Torso\s+no'
        }
    }

    Context 'with layers' {
        It 'passes them on in the order they came, after the stream has ended' {
            $layers = $file | Get-Layer -Leaf | Sort-Object Name
            $out = $layers | Rename-Layer -NewName { 'x ' + $_.Name }
            $out.LayerNumber | Should -Be $layers.LayerNumber
            $out.Name | Should -BeLike 'x *'
        }

        It 'plans over all of them, so that names can be swapped' {
            $head, $body = ($file | Get-Layer -LayerNumber 4), ($file | Get-Layer -LayerNumber 8)
            $head, $body | Rename-Layer -NewName { if ($_.Name -eq 'Body') { 'Head' } else { 'Body' } } > $null
            "$($head.Name) $($body.Name)" | Should -Be 'Body Head'
        }

        It 'applies nothing if the stream breaks off' {
            { & { $file | Get-Layer; throw 'broken off' } | Rename-Layer -Match '^' -Replacement 'x ' } | Should -Throw 'broken off'
            $file.PendingCount | Should -Be 0
        }
    }

    Context '-Like' {
        BeforeEach {
            $names = ($file | Get-Layer).Name
            $file | Rename-Layer -NewName 'Layer {n}' -Number > $null
        }

        It 'gives layers and groups the names of an older delivery' {
            $result = Get-Streams { $file | Rename-Layer -Like (Copy-Fixture groups-nested (Join-Path $TestDrive 'older/hero.psd')) }
            [object]::ReferenceEquals($result.Output[0], $file) | Should -BeTrue
            ($file | Get-Layer).Name | Should -Be $names
        }

        It 'takes a file that was read, and a folder with one of the same name' {
            $older = Copy-Fixture groups-nested (Join-Path $TestDrive 'older/hero.psd')
            ($file | Get-Layer -LayerNumber 8 | Rename-Layer -Like (Get-LayerFile $older)).Name | Should -Be 'Body'
            $file | Rename-Layer -Like (Split-Path $older) > $null
            ($file | Get-Layer).Name | Should -Be $names
        }

        It 'shows with -Preview how each was found, and changes nothing' {
            $older = Copy-Fixture groups-nested (Join-Path $TestDrive 'older/hero.psd')
            $rows = @($file | Rename-Layer -Like $older -Preview)
            $rows.Count | Should -Be 8
            ($rows[7].Old, $rows[7].New, "$($rows[7].MatchedBy)", $rows[7].Certainty) | Should -Be 'Layer 8', 'Body', 'Fingerprint', 100
            $rows[7].Why | Should -BeLike 'It holds the same pixels as*'
            $rows | Out-String -Width 120 | Should -Match 'No\s+Now\s+Before\s+Found by\s+Sure %\s+Why'
            ($file | Get-Layer -LayerNumber 8).Name | Should -Be 'Layer 8'
        }

        It 'has an error where there is no older file' {
            { $file | Rename-Layer -Like (Join-Path $TestDrive 'nothing.psd') } | Should -Throw '*no such file*'
            Copy-Fixture ag-text (Join-Path $TestDrive 'others/nora.psd') > $null
            (Get-Streams { $file | Rename-Layer -Like (Join-Path $TestDrive 'others') }).Errors[0].ToString() | Should -BeLike '*no file of this name*'
        }
    }
}
